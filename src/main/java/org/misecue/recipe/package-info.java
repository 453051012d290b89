/**
 * The written recipe: {@link org.misecue.recipe.Recipe} with its components, ingredient lines, method steps and
 * settings. {@code RecipeReader} is the way in: it reads any document, keeps every original line and reports what it
 * could not understand.
 */
@NullMarked
package org.misecue.recipe;

import org.jspecify.annotations.NullMarked;
