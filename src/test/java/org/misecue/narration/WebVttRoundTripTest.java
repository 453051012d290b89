package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written as the standard says reads back the same. */
class WebVttRoundTripTest {

    @Property(tries = 300)
    void written_cues_read_back(@ForAll("cues") List<Cue> cues) {
        StringBuilder file = new StringBuilder("WEBVTT\n");
        cues.forEach(cue -> write(cue, file));
        List<Cue> read = TestCues.read(file.toString()).cues();
        assertThat(read.stream().map(TestCues::line).toList())
                .isEqualTo(cues.stream().map(TestCues::line).toList());
        assertThat(read.stream().map(TestCues::words).toList())
                .isEqualTo(cues.stream().map(TestCues::words).toList());
    }

    @Provide
    Arbitrary<List<Cue>> cues() {
        Arbitrary<String> word = Arbitraries.strings()
                .withChars("abcDEF019½é&<>;.'-#")
                .ofMinLength(1)
                .ofMaxLength(9);
        Arbitrary<String> name = Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(8);
        Arbitrary<Cue> cue = Combinators.combine(
                        Arbitraries.integers().between(0, 5_000_000),
                        word.list().ofMinSize(1).ofMaxSize(12),
                        name.optional())
                .as(WebVttRoundTripTest::cue);
        return cue.list().ofMinSize(1).ofMaxSize(10).map(list -> list.stream()
                .sorted((a, b) -> a.start().compareTo(b.start()))
                .toList());
    }

    /** Words 250 ms apart, each with its own time. */
    private static Cue cue(int startMillis, List<String> texts, Optional<String> speaker) {
        List<Word> words = new ArrayList<>();
        for (String text : texts) {
            words.add(new Word(text, Duration.ofMillis(startMillis + 250L * words.size())));
        }
        Duration end = Duration.ofMillis(startMillis + 250L * words.size());
        return new Cue(Duration.ofMillis(startMillis), end, speaker, String.join(" ", texts), words);
    }

    private static void write(Cue cue, StringBuilder file) {
        file.append('\n').append(stamp(cue.start())).append(" --> ").append(stamp(cue.end()));
        file.append('\n');
        cue.speaker().ifPresent(name -> file.append("<v ").append(name).append('>'));
        for (Word word : cue.words()) {
            file.append('<').append(stamp(word.at())).append('>');
            file.append(word.text().replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"));
            file.append(' ');
        }
        file.append('\n');
    }

    private static String stamp(Duration time) {
        return String.format(
                "%02d:%02d:%02d.%03d", time.toHours(), time.toMinutesPart(), time.toSecondsPart(), time.toMillisPart());
    }
}
