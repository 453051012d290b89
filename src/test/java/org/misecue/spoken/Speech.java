package org.misecue.spoken;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;

/** Makes narration out of plain sentences for tests: two words a second, "|" where the recogniser starts a new cue. */
public final class Speech {

    private static final Duration PER_WORD = Duration.ofMillis(500);

    private Speech() {}

    public static WordStream stream(String text) {
        return WordStream.of(List.of(narration(text)));
    }

    public static Narration narration(String text) {
        List<Cue> cues = new ArrayList<>();
        Duration at = Duration.ZERO;
        for (String piece : text.split("\\|")) {
            Duration start = at;
            List<Word> words = new ArrayList<>();
            for (String word : piece.strip().split("\\s+")) {
                words.add(new Word(word, at));
                at = at.plus(PER_WORD);
            }
            cues.add(new Cue(start, at, Optional.empty(), piece.strip(), List.copyOf(words)));
        }
        return new Narration("narration/main.txt", List.copyOf(cues), List.of());
    }
}
