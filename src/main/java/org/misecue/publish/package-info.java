/**
 * What the viewers get: the description text with its chapters, and the schema.org document.
 */
@NullMarked
package org.misecue.publish;

import org.jspecify.annotations.NullMarked;
