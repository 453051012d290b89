/**
 * What goes out with the film. {@link org.misecue.publish.Describer} is the way in and writes a
 * {@link org.misecue.publish.Description}: the ingredient list of the published batch with its allergens in capitals,
 * what the film does not say, the method in short and the {@link org.misecue.publish.Chapters}, all within the limit of
 * the box. {@link org.misecue.publish.SchemaOrg} writes the same recipe as JSON-LD for a web page. The text says what an
 * ingredient contains and never what it is free of.
 */
@NullMarked
package org.misecue.publish;

import org.jspecify.annotations.NullMarked;
