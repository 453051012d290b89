/**
 * The producer's page: written against spoken and shown, the worst first. {@link org.misecue.desk.check.CheckStation} shows
 * what {@link org.misecue.desk.check.CheckSheet} found and follows the files; {@code Deciding} takes decisions and
 * {@code Hearing} what the recogniser misheard, both into the same files as the command. Each form carries what its row
 * showed, so that nobody decides on something that they have not seen, and nobody overwrites somebody else.
 */
@NullMarked
package org.misecue.desk.check;

import org.jspecify.annotations.NullMarked;
