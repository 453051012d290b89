package org.misecue.footage;

import java.util.List;

/**
 * What was heard on one sound track.
 *
 * @param silences in time order
 */
public record TrackSound(Loudness loudness, List<Silence> silences) {}
