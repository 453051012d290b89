package org.misecue.search;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.misecue.search.Wanted.Place;

/** Finds in a window which words matched, and so the moment and the quote. */
final class Spotter {

    /** Matches further apart than so many words are not one moment. */
    private static final int WORDS_OF_A_MOMENT = 40;

    private final List<Wanted> plan;
    private final Narrowing within;

    Spotter(List<Wanted> plan, Narrowing within) {
        this.plan = plan;
        this.within = within;
    }

    /** Nothing where the match lies wholly beyond the passage's own words: the next passage has it too. */
    Optional<Hit> hit(Path episode, Window window, double score) {
        if (plan.isEmpty()) {
            Duration at = within.from()
                    .filter(from -> from.compareTo(window.passage().start()) > 0)
                    .orElse(window.passage().start());
            return Optional.of(hit(episode, window, score, at, Quote.whole(window)));
        }
        List<Token> tokens = Token.of(window.text());
        List<List<Place>> places = plan.stream()
                .map(wanted -> wanted.places(tokens, window.amounts()))
                .toList();
        OptionalInt first = first(places, tokens, window);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        int from = first.getAsInt();
        List<Hit.Mark> marks = places.stream()
                .flatMap(found -> shown(found, from, tokens, window.ownLength()))
                .sorted(Comparator.comparingInt(Hit.Mark::from))
                .toList();
        Duration at = time(window, tokens.get(from).from());
        return Optional.of(hit(episode, window, score, at, Quote.around(window, marks)));
    }

    private static Optional<Place> nextFrom(List<Place> found, int from) {
        return found.stream()
                .filter(place -> place.from() >= from && place.from() < from + WORDS_OF_A_MOMENT)
                .min(Comparator.comparingInt(Place::from));
    }

    /** Words of the next cue only where there are none of this one. */
    private static Stream<Hit.Mark> shown(List<Place> found, int from, List<Token> tokens, int ownLength) {
        List<Place> near = found.stream()
                .filter(place -> place.from() >= from && place.from() < from + WORDS_OF_A_MOMENT)
                .toList();
        List<Place> own = near.stream()
                .filter(place -> tokens.get(place.from()).from() < ownLength)
                .toList();
        return (own.isEmpty() ? near : own)
                .stream()
                        .map(place -> new Hit.Mark(
                                tokens.get(place.from()).from(),
                                tokens.get(place.to() - 1).to()));
    }

    private static Hit hit(Path episode, Window window, double score, Duration at, Quote quote) {
        Passage passage = window.passage();
        return new Hit(
                episode,
                passage.kind(),
                passage.source(),
                at,
                quote.overTheBorder() ? window.textEnd() : passage.end(),
                quote.text(),
                quote.marks(),
                passage.step(),
                passage.speaker(),
                score);
    }

    /** The word from which on most of what is wanted is said in the fewest words. */
    private OptionalInt first(List<List<Place>> places, List<Token> tokens, Window window) {
        List<Place> starts = new ArrayList<>();
        places.forEach(starts::addAll);
        return starts.stream()
                .mapToInt(Place::from)
                .filter(from -> tokens.get(from).from() < window.ownLength())
                .filter(from -> within.holds(() -> time(window, tokens.get(from).from())))
                .sorted()
                .boxed()
                .min(Comparator.comparingDouble(from -> -worthFrom(places, from)))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /** How much is found from here on, less a little for each word until it is complete. */
    private static double worthFrom(List<List<Place>> places, int from) {
        double worth = 0;
        int last = from;
        for (List<Place> found : places) {
            Optional<Place> next = nextFrom(found, from);
            if (next.isPresent()) {
                worth += next.get().worth();
                last = Math.max(last, next.get().to());
            }
        }
        return worth - (last - from) * 0.001;
    }

    /** When the word that begins at this character is said. */
    private static Duration time(Window window, int character) {
        if (window.times().isEmpty()) {
            return window.passage().start();
        }
        long spaces = window.text()
                .substring(0, character)
                .chars()
                .filter(c -> c == ' ')
                .count();
        return window.times().of((int) spaces);
    }
}
