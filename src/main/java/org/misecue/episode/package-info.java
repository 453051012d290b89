/**
 * The folder on disk. {@link org.misecue.episode.Episode} is the way in: it finds the one recipe, the narrations and the
 * footage, and reads {@code episode.yaml} into {@link org.misecue.episode.EpisodeSettings}, strictly. Results are
 * written through {@link org.misecue.episode.OutFolder}, each file whole or not at all and only inside the episode.
 * {@link org.misecue.episode.NewEpisode} makes a folder around a recipe.
 */
@NullMarked
package org.misecue.episode;

import org.jspecify.annotations.NullMarked;
