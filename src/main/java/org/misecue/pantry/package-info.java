/**
 * What is known about ingredients: names in several Englishes, grams per household measure, allergens, lead-time
 * habits, shop aisle. {@link org.misecue.pantry.Pantry} is the way in; the rows are in {@code pantry.yaml} in the
 * resources, each with its source. {@link org.misecue.pantry.Weighing} and {@link org.misecue.pantry.HouseholdMeasure}
 * take an ingredient from cups and spoons to grams and back; {@link org.misecue.pantry.EggClass} knows egg sizes.
 */
@NullMarked
package org.misecue.pantry;

import org.jspecify.annotations.NullMarked;
