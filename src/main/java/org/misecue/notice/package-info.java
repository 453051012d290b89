/**
 * What is told to the person about their files: {@link org.misecue.notice.BadInput} stops the work (exit code 2),
 * {@link org.misecue.notice.Note} goes along with a result. Both name the place and the remedy.
 * {@link org.misecue.notice.StrictYaml} and {@link org.misecue.notice.NearestWord} serve those who read settings and
 * tables that people write.
 */
@NullMarked
package org.misecue.notice;

import org.jspecify.annotations.NullMarked;
