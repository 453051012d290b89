/**
 * The written recipe: {@link org.misecue.recipe.Recipe} with its components, ingredient lines, method steps and
 * settings. {@link org.misecue.recipe.RecipeReader} is the way in: it reads any document, keeps every original line and
 * notes what it could not understand. {@link org.misecue.recipe.RecipeText} shows people how a recipe was understood,
 * {@link org.misecue.recipe.RecipeJson} shows programs.
 *
 * <p>The way of a recipe: {@code manuscript} makes lines of a document; {@code Outline} sorts them into head, parts and
 * method; {@code IngredientLineParser} reads the lines of the parts, {@code StepParser} those of the method, with a
 * reader for each kind of figure ({@code OvenReader}, {@code DurationReader}, {@code TinReader}, {@code YieldReader}),
 * the table of {@code Techniques}, and {@code UseFinder}, which tells whose butter "the butter" is, with {@code Shares}
 * and {@code Leftovers} for how much of it. What looks wrong is found last, by one {@code RecipeCheck} a rule.
 *
 * <p>{@link org.misecue.recipe.MethodOrder} tells planners which work needs which: {@code StretchReader} cuts the steps
 * where the food waits, {@code WaitReader} says how long and where, and {@code NeedFinder} remembers who has the dough.
 */
@NullMarked
package org.misecue.recipe;

import org.jspecify.annotations.NullMarked;
