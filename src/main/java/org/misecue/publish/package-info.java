/**
 * What goes out with the film. Everything is made from an {@link org.misecue.publish.Edition}:
 * {@link org.misecue.publish.Describer} writes the text for the box, within its limit;
 * {@link org.misecue.publish.RecipePage} the page and its print; {@link org.misecue.publish.SchemaOrg} the JSON-LD. What
 * text and page say is gathered by name in {@link org.misecue.publish.PublishedNames} and laid out by
 * {@link org.misecue.publish.PublishTemplates}, in the language of {@link org.misecue.publish.Labels}. They say what an
 * ingredient contains and never what it is free of.
 */
@NullMarked
package org.misecue.publish;

import org.jspecify.annotations.NullMarked;
