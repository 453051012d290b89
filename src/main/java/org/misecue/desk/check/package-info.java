/**
 * The producer's page: written against spoken and shown, the worst first. Each row plays its moments and takes its decision;
 * {@link org.misecue.desk.check.CheckStation} hands it to the same files as the command. A form carries a mark of what its
 * row showed, so that nobody decides on something that they have not seen.
 */
@NullMarked
package org.misecue.desk.check;

import org.jspecify.annotations.NullMarked;
