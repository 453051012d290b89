package org.misecue.desk.find;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.align.StepSpan;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;

/**
 * What can be played or read along: a film with what is said in it, or one of the two alone.
 *
 * @param steps when each step is on, in time order
 */
public record Roll(Optional<Film> film, Optional<Narration> said, List<StepSpan> steps) {

    /** As addresses name it. */
    public String name() {
        return said.map(Narration::source).or(() -> film.map(Film::name)).orElse("");
    }

    /** As people name it: the film, or the narration where there is none. */
    public String title() {
        return film.map(Film::name).orElse(name());
    }

    public List<Cue> cues() {
        return said.map(Narration::cues).orElse(List.of());
    }

    /** Of the film; without one, to the end of the last word. */
    public Duration length() {
        return film.map(Film::length).orElseGet(() -> cues().stream()
                .map(Cue::end)
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO));
    }
}
