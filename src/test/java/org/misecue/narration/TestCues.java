package org.misecue.narration;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;

/** Cues written on one line each, as the tests' tables have them. */
final class TestCues {

    private TestCues() {}

    static Narration read(String text) {
        return NarrationReader.read(text.getBytes(StandardCharsets.UTF_8), "main");
    }

    static List<String> lines(Narration narration) {
        return narration.cues().stream().map(TestCues::line).toList();
    }

    /** Such as {@code 5.0-9.0 Ann: weigh the flour}. */
    static String line(Cue cue) {
        return seconds(cue.start()) + "-" + seconds(cue.end()) + " "
                + cue.speaker().map(name -> name + ": ").orElse("") + cue.text();
    }

    /** Such as {@code 5.0 weigh, 6.5 the, 8.0 flour}. */
    static String words(Cue cue) {
        return cue.words().stream()
                .map(word -> seconds(word.at()) + " " + word.text())
                .collect(Collectors.joining(", "));
    }

    static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }
}
