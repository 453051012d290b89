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
 * @param said the narrations on its clock
 * @param steps when each step is on, in time order
 * @param notes on what is said: how it was put on the film's clock, and what was left out, is said twice or is missing
 */
public record Roll(Optional<Film> film, List<Narration> said, List<StepSpan> steps, List<String> notes) {

    /** As addresses name it. */
    public String name() {
        return said.stream()
                .map(Narration::source)
                .findFirst()
                .or(() -> film.map(Film::name))
                .orElse("");
    }

    /** Whether it is meant by the name of a narration or of a film. */
    boolean isCalled(String name) {
        return said.stream().map(Narration::source).anyMatch(name::equals)
                || film.map(Film::name).filter(name::equals).isPresent()
                || name().equals(name);
    }

    /** As people name it: the film, or the narration where there is none. */
    public String title() {
        return film.map(Film::name).orElse(name());
    }

    public List<Cue> cues() {
        return said.stream()
                .flatMap(one -> one.cues().stream())
                .sorted(Comparator.comparing(Cue::start))
                .toList();
    }

    /** Of the film; without one, to the end of the last word. */
    public Duration length() {
        return film.map(Film::length).orElseGet(() -> cues().stream()
                .map(Cue::end)
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO));
    }
}
