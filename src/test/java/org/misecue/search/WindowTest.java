package org.misecue.search;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NotEmpty;
import net.jqwik.api.constraints.Size;
import org.apache.lucene.analysis.tokenattributes.BytesTermAttribute;
import org.apache.lucene.analysis.tokenattributes.PositionIncrementAttribute;
import org.apache.lucene.util.BytesRef;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Cue;
import org.misecue.narration.Word;

/** Cues that follow closely are looked at as one, and nothing that was said gets lost or moved by that. */
class WindowTest {

    private static final String SOURCE = "main.vtt";

    @TempDir
    Path episode;

    /** A cue of so many words; each tells when it is said. */
    private static Passage cue(int start, int words, String speaker, int step) {
        String text = IntStream.range(start, start + words)
                .mapToObj(second -> "w" + second)
                .collect(Collectors.joining(" "));
        return cue(start, text, speaker, step);
    }

    /** A word each second. */
    private static Passage cue(int start, String text, String speaker, int step) {
        List<Word> said = new ArrayList<>();
        for (String word : text.split(" ")) {
            said.add(new Word(word, Duration.ofSeconds(start + said.size())));
        }
        Duration end = Duration.ofSeconds(start + said.size());
        return Passage.of(SOURCE, new Cue(Duration.ofSeconds(start), end, Optional.of(speaker), text, said), step);
    }

    private static String own(Window window) {
        return window.text().substring(0, window.ownLength());
    }

    @Property(tries = 300)
    void each_word_is_in_one_window_and_keeps_its_time(
            @ForAll @NotEmpty @Size(max = 30) List<@IntRange(min = 1, max = 14) Integer> lengths,
            @ForAll @Size(30) List<@IntRange(max = 7) Integer> pauses,
            @ForAll @Size(30) List<Boolean> changes) {
        List<Passage> passages = new ArrayList<>();
        int at = 0;
        int step = 0;
        for (int i = 0; i < lengths.size(); i++) {
            step += changes.get(i) ? 1 : 0;
            passages.add(cue(at, lengths.get(i), step % 2 == 0 ? "Ada" : "Mo", step));
            at += lengths.get(i) + pauses.get(i);
        }

        List<Window> windows = Window.over(passages);

        assertThat(windows.stream().map(WindowTest::own).collect(Collectors.joining(" ")))
                .isEqualTo(passages.stream().map(Passage::text).collect(Collectors.joining(" ")));
        for (Window window : windows) {
            List<String> words = List.of(window.text().split(" "));
            assertThat(words)
                    .isEqualTo(IntStream.range(0, window.times().size())
                            .mapToObj(i -> "w" + window.times().of(i).toSeconds())
                            .toList());
            Passage passage = window.passage();
            boolean oneCue = passages.stream().anyMatch(cue -> cue.text().equals(own(window)));
            assertThat(oneCue || passage.end().minus(passage.start()).compareTo(Folding.NEAR) <= 0)
                    .isTrue();
            Window kept = WindowBytes.window(
                    new WindowBytes().of(window, window.text().getBytes(UTF_8)));
            assertThat(kept.text()).isEqualTo(window.text());
            assertThat(kept.times()).isEqualTo(window.times());
        }
    }

    @Property
    void lucene_gets_the_words_that_the_search_sees(@ForAll @Size(max = 3) List<String> texts) throws IOException {
        TermStream stream = new TermStream();
        for (String text : texts) {
            List<String> words = new ArrayList<>();
            stream.over(text, text.getBytes(UTF_8)).reset();
            while (stream.incrementToken()) {
                assertThat(stream.getAttribute(PositionIncrementAttribute.class).getPositionIncrement())
                        .isEqualTo(1);
                words.add(stream.getAttribute(BytesTermAttribute.class)
                        .getBytesRef()
                        .utf8ToString());
            }
            stream.end();
            assertThat(words)
                    .isEqualTo(Token.of(text).stream()
                            .map(token -> new BytesRef(token.word()).utf8ToString())
                            .toList());
        }
    }

    @Test
    void amounts_stay_on_their_words_where_cues_become_one() {
        Passage first = amount(cue(0, 3, "Ada", 1), "first", 1, 3);
        Passage second = amount(cue(3, 4, "Ada", 1), "second", 0, 2);
        Passage later = amount(cue(20, 4, "Ada", 2), "over the border", 3, 9);
        Passage last = cue(24, 2, "Mo", 2);

        List<Window> windows = Window.over(List.of(first, second, later, last));

        assertThat(windows)
                .flatExtracting(window -> window.amounts().stream()
                        .map(amount -> amount.key() + ": " + window.text().substring(amount.from(), amount.to()))
                        .toList())
                .containsExactly("first: w1 w2", "second: w3 w4", "over the border: w23 w24 w25");
    }

    private static Passage amount(Passage cue, String key, int from, int to) {
        return new Passage(
                cue.kind(),
                cue.source(),
                cue.start(),
                cue.end(),
                cue.text(),
                cue.step(),
                cue.speaker(),
                cue.words(),
                List.of(new SaidAmount(key, from, to)),
                Set.of());
    }

    @Test
    void a_time_narrows_down_to_moments_and_not_to_cues_that_became_one() {
        MomentIndex.build(
                episode, List.of(cue(10, "fold it in", "Ada", 1), cue(14, "and fold again", "Ada", 1)), List.of());
        assertThat(Stream.of("fold", "fold from:0:12", "fold to:0:12", "fold from:0:16")
                        .map(query -> MomentIndex.find(episode, query, 5).hits().stream()
                                .map(hit -> hit.at().toSeconds())
                                .toList()))
                .containsExactly(List.of(10L), List.of(15L), List.of(10L), List.of());
    }
}
