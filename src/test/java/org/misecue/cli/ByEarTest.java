package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a recogniser misheard, corrected by somebody who listened. */
class ByEarTest {

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void buns() {
        stage = new OnStage(temp);
        stage.write("buns/recipe.md", "# Buns\n\n- 150 g plain flour\n- 2 eggs\n\n1. Whisk all.\n");
        stage.write("buns/narration/main.txt", "[0:02] now one thirty grams of flower\n[0:08] and two eggs\n");
    }

    private OnStage.Ran decide(String... options) {
        String[] all = new String[options.length + 4];
        System.arraycopy(options, 0, all, 0, options.length);
        System.arraycopy(new String[] {"buns", "--by=Nell", "--when", "2026-05-04 10:00"}, 0, all, options.length, 4);
        String[] args = new String[all.length + 1];
        args[0] = "decide";
        System.arraycopy(all, 0, args, 1, all.length);
        return stage.run(args);
    }

    @Test
    void a_correction_changes_the_verdict_and_is_shown_wherever_it_counts() {
        assertThat(stage.run("compare", "buns").exit()).isEqualTo(1);
        assertThat(decide("--heard", "0:02 one thirty = one fifty").exit()).isZero();
        OnStage.Ran after = stage.run("compare", "buns");
        assertThat(after.exit()).isZero();
        assertThat(after.out())
                .contains(
                        "Corrected by ear\n  At 0:02 in narration/main.txt Nell heard “one fifty” where “one thirty” was written (2026-05-04 10:00).");
        assertThat(stage.run("compare", "buns", "--json").out()).contains("\"heardOtherwise\" : [ \"At 0:02");
        assertThat(stage.run("find", "-e", "buns", "fifty").out()).contains("[fifty]");
    }

    @Test
    void the_narration_stays_as_it_is_and_a_correction_can_be_taken_back() throws IOException {
        String before = Files.readString(stage.path("buns/narration/main.txt"));
        decide("--heard", "0:02 one thirty = one fifty");
        assertThat(Files.readString(stage.path("buns/narration/main.txt"))).isEqualTo(before);
        assertThat(decide("--as-written", "0:02").exit()).isEqualTo(1);
        assertThat(stage.run("compare", "buns").out()).doesNotContain("Corrected");
    }

    @Test
    void of_two_narrations_of_one_name_the_one_that_is_named_is_corrected() {
        stage.write("buns/narration/main.vtt", "WEBVTT\n\n00:02.000 --> 00:04.000\nwith one forty grams of sugar\n");
        assertThat(decide("--heard", "main.srt 0:02 one forty = one sixty").err())
                .contains("--heard: name the narration first: one of narration/main.txt, narration/main.vtt.");
        assertThat(decide("--heard", "main.vtt 0:02 one forty = one sixty").err())
                .doesNotContain("misecue:");
        assertThat(stage.run("compare", "buns").out()).contains("At 0:02 in narration/main.vtt Nell heard “one sixty”");
    }

    @Test
    void what_is_not_said_there_is_refused_with_what_is() {
        OnStage.Ran ran = decide("--heard", "0:02 two fifty = one fifty");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .isEqualTo(
                        "misecue: narration/main.txt: “two fifty” is not said at 0:02; there it says “now one thirty grams of flower and”.\n");
    }

    @Test
    void what_cannot_be_understood_is_refused() {
        assertThat(decide("--heard", "one thirty").err())
                .contains("--heard: expected a time, the words, and what is heard");
        assertThat(decide("--heard", "9:99 one = two").err()).contains("expected a time such as 3:20");
        assertThat(decide("--as-written", "0:30").err()).contains("nothing was corrected at 0:30");
    }

    @Test
    void a_damaged_list_is_told_with_its_line() {
        stage.write("buns/.misecue/corrections.yaml", "- {narration: narration/main.txt, at: soon, was: one}\n");
        OnStage.Ran ran = stage.run("compare", "buns");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err())
                .startsWith("misecue: .misecue/corrections.yaml:1:")
                .contains("a time on the narration's clock");
    }

    @Test
    void the_way_of_a_verdict_tells_what_was_corrected() {
        decide("--heard", "0:02 one thirty = one fifty");
        assertThat(stage.run("compare", "buns", "--explain", "flour").out())
                .contains("Corrected by ear\n  At 0:02 in narration/main.txt Nell heard “one fifty”");
        assertThat(stage.run("compare", "buns", "--explain", "flour", "--json").out())
                .contains("\"heardOtherwise\" : [ \"At 0:02");
    }

    @Test
    void a_correction_whose_words_are_gone_is_told_as_a_note() {
        decide("--heard", "0:02 one thirty = one fifty");
        stage.write("buns/narration/main.txt", "[0:02] now two fifty grams of flower\n[0:08] and two eggs\n");
        OnStage.Ran ran = stage.run("compare", "buns");
        assertThat(ran.err()).contains("note: narration/main.txt: “one thirty” is no longer said at 0:02");
        assertThat(ran.out()).doesNotContain("Corrected by ear");
    }
}
