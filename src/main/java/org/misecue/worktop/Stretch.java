package org.misecue.worktop;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;

/**
 * Some words of a narration, one after the other.
 *
 * @param source the narration's file
 */
public record Stretch(String source, List<Word> words) {

    private static final Duration BEFORE = Duration.ofSeconds(4);
    private static final Duration BEHIND = Duration.ofSeconds(6);

    /** What is said around a moment; empty where nothing is. */
    public static Stretch around(Narration narration, Duration moment) {
        return new Stretch(
                narration.source(),
                words(narration)
                        .dropWhile(word -> word.at().compareTo(moment.minus(BEFORE)) < 0)
                        .takeWhile(word -> word.at().compareTo(moment.plus(BEHIND)) <= 0)
                        .toList());
    }

    /** So many words from one on. */
    static Stretch from(Narration narration, Duration first, int count) {
        return new Stretch(
                narration.source(),
                words(narration)
                        .dropWhile(word -> word.at().compareTo(first) < 0)
                        .limit(count)
                        .toList());
    }

    /** As somebody had it before their eyes. */
    public static Stretch seen(String source, Duration from, String text) {
        return new Stretch(
                source,
                Stream.of(text.strip().split("\\s+"))
                        .map(word -> new Word(word, from))
                        .toList());
    }

    private static Stream<Word> words(Narration narration) {
        return narration.cues().stream().flatMap(cue -> cue.words().stream());
    }

    /** When the first word begins. */
    public Duration from() {
        return words.isEmpty() ? Duration.ZERO : words.get(0).at();
    }

    /** Whether something at this time is within it. */
    public boolean covers(Duration at) {
        return !words.isEmpty()
                && at.compareTo(from()) >= 0
                && at.compareTo(words.get(words.size() - 1).at()) <= 0;
    }

    public String text() {
        return words.stream().map(Word::text).collect(Collectors.joining(" "));
    }
}
