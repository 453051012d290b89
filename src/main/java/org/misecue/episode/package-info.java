/**
 * The folder on disk: where things are, {@code episode.yaml}, and where results may be written. {@code Episode} is the way in.
 */
@NullMarked
package org.misecue.episode;

import org.jspecify.annotations.NullMarked;
