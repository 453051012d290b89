package org.misecue.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.misecue.edit.Captioner.Captions;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.Shift;
import org.misecue.narration.Word;

/** Against the rules of caption guides: two lines of 42, one to seven seconds, at most 20 signs a second. */
class CaptionerTest {

    private static final CaptionRules RULES = CaptionRules.USUAL;

    private static Narration said(double wordsInASecond, String... cues) {
        List<Cue> all = new ArrayList<>();
        double at = 0;
        for (String text : cues) {
            List<Word> words = new ArrayList<>();
            double start = at;
            for (String word : text.split(" ")) {
                words.add(new Word(word, millis(at)));
                at += 1 / wordsInASecond;
            }
            all.add(new Cue(millis(start), millis(at), Optional.empty(), text, words));
        }
        return new Narration("narration/main.vtt", all, List.of());
    }

    private static Duration millis(double seconds) {
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    private static List<String> texts(Captions captions) {
        return captions.captions().stream()
                .map(one -> String.join(" | ", one.lines()))
                .toList();
    }

    @Test
    void sentences_stay_together_and_break_at_a_breath() {
        Captions captions = Captioner.of(
                said(2.5, "Now the butter goes in, all of it,", "and we beat it until it is pale. Then come the eggs."),
                Figures.none(),
                RULES);
        assertThat(texts(captions))
                .containsExactly(
                        "Now the butter goes in, all of it, | and we beat it until it is pale.", "Then come the eggs.");
    }

    @Test
    void a_number_is_not_torn_from_its_unit() {
        Captions captions = Captioner.of(
                said(2.5, "so what we need for this is a bowl with 175 g of unsalted butter that is soft"),
                Figures.none(),
                RULES);
        assertThat(texts(captions)).noneMatch(text -> text.matches(".*175( \\||$).*"));
    }

    @Test
    void another_speaker_begins_another_caption() {
        Cue first = new Cue(
                millis(0),
                millis(1),
                Optional.of("Ines"),
                "Is it done?",
                List.of(new Word("Is", millis(0)), new Word("it", millis(0.3)), new Word("done?", millis(0.6))));
        Cue second = new Cue(
                millis(1),
                millis(1.5),
                Optional.of("Odo"),
                "Not yet.",
                List.of(new Word("Not", millis(1)), new Word("yet.", millis(1.2))));
        Captions captions = Captioner.of(new Narration("n", List.of(first, second), List.of()), Figures.none(), RULES);
        assertThat(captions.captions())
                .extracting(Caption::speaker)
                .containsExactly(Optional.of("Ines"), Optional.of("Odo"));
    }

    @Test
    void the_narrations_of_a_film_are_joined_and_one_in_two_formats_is_shown_once() {
        Narration first = said(3, "Weigh the flour and sift it.");
        Narration later = Shift.by(said(3, "Fold it in with care."), Duration.ofSeconds(30));
        Captions both = Captioner.of(List.of(first, later), Figures.none(), RULES);
        assertThat(texts(both)).containsExactly("Weigh the flour and sift it.", "Fold it in with care.");
        assertThat(both.captions().get(1).start()).isGreaterThanOrEqualTo(Duration.ofSeconds(30));
        assertThat(Captioner.of(List.of(first, first, later), Figures.none(), RULES)
                        .captions())
                .isEqualTo(both.captions());
    }

    @Test
    void what_is_said_faster_than_it_can_be_read_is_kept_and_told() {
        Captions captions = Captioner.of(
                said(
                        9,
                        "strawberries raspberries blackberries blueberries gooseberries cranberries elderberries mulberries"),
                Figures.none(),
                RULES);
        assertThat(String.join(" ", texts(captions)).replace(" | ", " "))
                .isEqualTo(
                        "strawberries raspberries blackberries blueberries gooseberries cranberries elderberries mulberries");
        assertThat(captions.notes()).isNotEmpty().allMatch(note -> note.toString()
                .contains("signs a second"));
    }

    @Property(tries = 200)
    void the_rules_hold_whatever_is_said(@ForAll Random random, @ForAll @IntRange(min = 1, max = 120) int count) {
        String[] words = {
            "and",
            "the",
            "butter",
            "goes",
            "in,",
            "175",
            "g",
            "of",
            "caster",
            "sugar.",
            "Then",
            "a",
            "pinch",
            "unsalted"
        };
        List<String> cues = new ArrayList<>();
        for (int left = count; left > 0; ) {
            int here = Math.min(left, 1 + random.nextInt(12));
            cues.add(
                    random.ints(here, 0, words.length).mapToObj(at -> words[at]).collect(Collectors.joining(" ")));
            left -= here;
        }
        Captions captions =
                Captioner.of(said(1 + random.nextDouble() * 2, cues.toArray(String[]::new)), Figures.none(), RULES);
        assertThat(String.join(" ", texts(captions)).replace(" | ", " ")).isEqualTo(String.join(" ", cues));
        Duration last = Duration.ZERO;
        for (Caption one : captions.captions()) {
            assertThat(one.lines()).hasSizeBetween(1, 2).allMatch(line -> line.length() <= 42);
            assertThat(one.end().minus(one.start())).isBetween(Duration.ofMillis(1), RULES.longest());
            assertThat(one.start()).isGreaterThanOrEqualTo(last);
            last = one.end().plus(RULES.gap());
        }
        assertThat(captions.captions())
                .allMatch(one -> one.speed() <= 20.5 || !captions.notes().isEmpty());
    }
}
