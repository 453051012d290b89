/**
 * What a recipe's document holds, whatever its kind: {@link org.misecue.recipe.manuscript.Manuscripts} is the way in
 * and answers a {@link org.misecue.recipe.manuscript.Manuscript}, lines with their numbers, each a heading, an item or a
 * text. A PDF is read from where its words stand on the page, a mail from the part that holds its text. There is one {@code ManuscriptReader} per kind of document; to add a kind, add a reader to the list in
 * {@code Manuscripts}.
 */
@NullMarked
package org.misecue.recipe.manuscript;

import org.jspecify.annotations.NullMarked;
