package org.misecue.narration;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Words that a recogniser misheard, with what somebody heard there. The narration's file stays as it is.
 *
 * @param at when the first of the words begins, on the narration's clock
 * @param was the words as the recogniser wrote them
 * @param heard what is really said; empty where nothing is
 */
public record Mend(Duration at, String was, String heard) {

    List<String> wasWords() {
        return plain(was);
    }

    List<String> heardWords() {
        return Stream.of(heard.strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Capitals and punctuation tell no words apart. */
    static List<String> plain(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                .map(word -> word.replaceAll("^[^\\p{L}\\p{N}]+|[^\\p{L}\\p{N}]+$", ""))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
