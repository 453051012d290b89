/**
 * What is known about ingredients: names in several Englishes, grams per household measure, allergens, lead-time
 * habits, shop aisle. {@link org.misecue.pantry.Pantry} is the way in; the rows are in {@code pantry.yaml} in the
 * resources, each with its source.
 */
@NullMarked
package org.misecue.pantry;

import org.jspecify.annotations.NullMarked;
