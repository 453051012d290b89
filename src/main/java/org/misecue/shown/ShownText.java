package org.misecue.shown;

import java.time.Duration;
import java.util.List;
import org.misecue.notice.Note;

/**
 * What a film shows to be read.
 *
 * @param film the film's name relative to the episode
 * @param cards in the order in which they appear
 * @param framesRead how often frames, or parts of them, were given to the recogniser
 * @param length the film's
 * @param notes what the person should know about the reading
 */
public record ShownText(String film, List<Card> cards, int framesRead, Duration length, List<Note> notes) {}
