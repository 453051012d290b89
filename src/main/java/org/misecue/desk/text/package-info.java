/**
 * What goes out with the film: the text for the description box, the page, its print and its data, what keeps them back, and
 * the step by which they count as published. {@link org.misecue.desk.text.TextStation} shows them; nothing is written into
 * {@code out/} until somebody asks for the files, and nothing is ever sent anywhere.
 */
@NullMarked
package org.misecue.desk.text;

import org.jspecify.annotations.NullMarked;
