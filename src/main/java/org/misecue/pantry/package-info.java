/**
 * What is known about ingredients: names in several Englishes, grams per household measure with their spread, allergens,
 * lead-time habits, storage, shop aisle. {@link org.misecue.pantry.Pantry} is the way in; the rows are in {@code
 * pantry.yaml} in the resources, each with its source, and a person's own {@code pantry.yaml} lies over them. {@link
 * org.misecue.pantry.Weighing} and {@link org.misecue.pantry.HouseholdMeasure} take an ingredient from cups and spoons to
 * grams and back; {@link org.misecue.pantry.EggMarket} knows what eggs weigh where; {@link
 * org.misecue.pantry.AllergenList} and {@link org.misecue.pantry.Substance} say which list names what by which word.
 */
@NullMarked
package org.misecue.pantry;

import org.jspecify.annotations.NullMarked;
