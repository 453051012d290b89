package org.misecue.episode;

import java.time.Duration;
import java.util.Optional;
import org.misecue.notice.Place;

/**
 * How a narration's own clock lies on its film's.
 *
 * @param narration its file name, without the folder
 * @param film the file name of its film, without the folder; empty for the film of its name, or the only one
 * @param begins what is added to the narration's times to have the film's; below zero where the narration began first
 * @param at where it stands in the settings
 */
public record Offset(String narration, Optional<String> film, Duration begins, Place at) {}
