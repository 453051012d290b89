package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.narration.Word;

/** Passages for tests. */
final class Talk {

    static final String SOURCE = "main.vtt";

    private Talk() {}

    /** Words one second apart; the cue lasts nine seconds. */
    static Passage said(int start, String text) {
        return said(start, text, 0, Optional.empty());
    }

    static Passage said(int start, String text, int step, Optional<String> speaker) {
        List<Word> words = new ArrayList<>();
        for (String word : text.split(" ")) {
            words.add(new Word(word, Duration.ofSeconds(start + words.size())));
        }
        return new Passage(
                Passage.Kind.NARRATION,
                SOURCE,
                Duration.ofSeconds(start),
                Duration.ofSeconds(start + 9),
                text,
                step,
                speaker,
                words,
                List.of(),
                Set.of());
    }
}
