package org.misecue.recipe;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.recipe.Techniques.Technique;

/**
 * The techniques that a step speaks of, each where it stands.
 *
 * @param wording of the step
 * @param list in the order of the text
 */
record Sightings(Wording wording, List<Sighting> list) {

    /** A technique with the place of its words. */
    record Sighting(Technique technique, int start, int end) {

        /** The words that tell it. */
        String in(Wording step) {
            return step.text().substring(start, end);
        }

        private String key() {
            return technique.key().toLowerCase(Locale.ROOT);
        }
    }

    private static final Cued BESIDE = Cued.inAnyCase("(?:,|\\bwhile|\\bminutes|\\bmins?)\\h+(?:\\p{L}+ly\\h+)?$");

    String text() {
        return wording.text();
    }

    /** Those to be listed with the step, each once. */
    List<Technique> techniques() {
        return list.stream()
                .map(Sighting::technique)
                .filter(Technique::listed)
                .distinct()
                .toList();
    }

    /** What goes on during a time that stands at a place of the text: the nearest words before it in its sentence, else after. */
    String around(int start, int end) {
        int from = Sentences.start(text(), start);
        int to = Sentences.end(text(), end);
        Optional<Sighting> before = between(from, start).max(Comparator.comparingInt(Sighting::start));
        return before.or(() -> between(end, to).findFirst())
                .or(() -> between(0, from).reduce((one, other) -> other))
                .map(Sighting::key)
                .orElse("");
    }

    private Stream<Sighting> between(int from, int to) {
        return list.stream().filter(sighting -> sighting.start >= from && sighting.start < to);
    }

    /** Those that go on beside a time stated for something else: the stirring of "simmer for 8 minutes, stirring". */
    List<Technique> beside() {
        return list.stream()
                .filter(sighting -> sighting.in(wording).endsWith("ing"))
                .filter(sighting -> BESIDE.endsAt(wording, sighting.start))
                .map(Sighting::technique)
                .toList();
    }
}
