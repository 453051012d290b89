package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MenderTest {

    /** A word a second, cues parted by "|". */
    private static Narration said(String text) {
        List<Cue> cues = new ArrayList<>();
        int at = 0;
        for (String cue : text.split(" \\| ")) {
            List<Word> words = new ArrayList<>();
            int start = at;
            for (String word : cue.split(" ")) {
                words.add(new Word(word, Duration.ofSeconds(at++)));
            }
            cues.add(new Cue(Duration.ofSeconds(start), Duration.ofSeconds(at), Optional.empty(), cue, words));
        }
        return new Narration("narration/main.vtt", cues, List.of());
    }

    private static Narration mended(String text, Mend... mends) {
        return Mender.mended(said(text), List.of(mends));
    }

    private static String text(Narration narration) {
        return narration.cues().stream().map(Cue::text).collect(Collectors.joining(" | "));
    }

    private static Mend mend(int at, String was, String heard) {
        return new Mend(Duration.ofSeconds(at), was, heard);
    }

    @Test
    void what_was_heard_takes_the_place_and_the_time_of_what_was_written() {
        Narration narration = mended("now two hundred grams of flower in", mend(5, "flower", "plain flour"));
        assertThat(text(narration)).isEqualTo("now two hundred grams of plain flour in");
        assertThat(narration.cues().get(0).words())
                .extracting(word -> word.at().toMillis())
                .containsExactly(0L, 1_000L, 2_000L, 3_000L, 4_000L, 5_000L, 5_500L, 6_000L);
        assertThat(narration.mended()).hasSize(1);
        assertThat(narration.notes()).isEmpty();
    }

    @Test
    void words_are_found_over_the_border_of_cues_and_without_their_punctuation() {
        assertThat(text(mended("so one | thirty, mils of milk", mend(1, "One thirty", "one fifty"))))
                .isEqualTo("so one fifty | mils of milk");
    }

    @Test
    void a_cue_of_which_nothing_is_left_is_gone() {
        assertThat(text(mended("so one | thirty | mils", mend(2, "thirty", ""))))
                .isEqualTo("so one | mils");
    }

    @Test
    void of_equal_words_the_nearest_are_meant() {
        assertThat(text(mended("ten of a ten of b ten of c", mend(3, "ten", "two"))))
                .isEqualTo("ten of a two of b ten of c");
    }

    @Test
    void a_correction_can_be_corrected() {
        assertThat(text(mended("some flower", mend(1, "flower", "floor"), mend(1, "floor", "flour"))))
                .isEqualTo("some flour");
    }

    @Test
    void what_is_no_longer_said_there_is_told_and_left_out() {
        Narration narration =
                mended("now the eggs go in one by one", mend(2, "flower", "flour"), mend(40, "eggs", "yolks"));
        assertThat(text(narration)).isEqualTo("now the eggs go in one by one");
        assertThat(narration.mended()).isEmpty();
        assertThat(narration.notes())
                .extracting(Object::toString)
                .containsExactly(
                        "narration/main.vtt: “flower” is no longer said at 0:02, so what was heard there, “flour”, was left out; listen again",
                        "narration/main.vtt: “eggs” is no longer said at 0:40, so what was heard there, “yolks”, was left out; listen again");
    }

    @ParameterizedTest
    @CsvSource({
        "and that's two hundred grams, and that's one seventy five grams, 2, two hundred, one seventy five",
        "two hundred grams, one hundred grams, 0, two, one",
        "plain flower, plain flour, 1, flower, flour",
        "a pinch pinch of salt, a pinch of salt, 2, pinch, ''",
        "half a of salt, half a teaspoon of salt, 1, a, a teaspoon",
        "spoon of salt, a spoon of salt, 0, spoon, a spoon",
        "um butter, butter, 0, um, ''",
        "and two cups of flour, and two cups of, 4, flour, ''",
        "one thirty one thirty, one thirty one fifty, 3, thirty, fifty",
    })
    void only_what_was_changed_in_a_stretch_is_corrected(
            String written, String heard, int at, String was, String instead) {
        List<Word> words = said(written).cues().get(0).words();
        Mend mend = Mend.between(words, heard).orElseThrow();
        assertThat(mend).isEqualTo(mend(at, was, instead));
        assertThat(text(mended(written, mend))).isEqualTo(heard);
    }

    @Test
    void capitals_and_punctuation_are_no_correction() {
        List<Word> words = said("so, two hundred grams").cues().get(0).words();
        assertThat(Mend.between(words, " So two hundred  grams. ")).isEmpty();
        assertThat(Mend.between(List.of(), "something")).isEmpty();
    }

    @Test
    void a_correction_within_another_becomes_one() {
        Mend earlier = mend(1, "two hundred", "one fifty");
        List<Word> words =
                mended("that's two hundred grams", earlier).cues().get(0).words();
        Mend later = Mend.between(words, "that's one seventy five grams").orElseThrow();
        assertThat(later.was()).isEqualTo("fifty");
        assertThat(later.over(earlier, words)).isEqualTo(mend(1, "one fifty", "one seventy five"));
        assertThat(later.over(earlier, words).corrects(earlier)).isTrue();
        Mend elsewhere = mend(0, "that's", "it's");
        assertThat(elsewhere.over(earlier, words)).isEqualTo(elsewhere);
    }

    @Test
    void dashes_are_no_words() {
        assertThat(text(mended("- flower – and eggs", mend(1, "flower and", "flour and"))))
                .isEqualTo("- flour and – eggs");
    }
}
