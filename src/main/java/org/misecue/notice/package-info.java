/**
 * What is told to the person about their files: {@link org.misecue.notice.BadInput} stops the work (exit code 2),
 * {@link org.misecue.notice.Note} goes along with a result. Both name the place and the remedy.
 */
@NullMarked
package org.misecue.notice;

import org.jspecify.annotations.NullMarked;
