package org.misecue.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.misecue.compare.Confidence;
import org.misecue.compare.Evidence;
import org.misecue.compare.Evidence.Via;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.narration.Moment;
import org.misecue.notice.BadInput;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;

class DocketTest {

    private static final LocalDateTime MONDAY = LocalDateTime.of(2026, 5, 4, 10, 0);

    @Test
    void what_nobody_decided_on_is_undecided_and_blocks_when_it_differs() {
        Docket docket = Docket.of(findings(butter(said(200, 200))), List.of());

        assertThat(docket.undecided()).hasSize(1);
        assertThat(docket.blocking()).hasSize(1);
        assertThat(docket.isClean()).isFalse();
    }

    @Test
    void keeping_a_line_settles_it() {
        Docket docket = after(Choice.KEEP, butter(said(200, 200)), butter(said(200, 200)));

        assertThat(docket.matters().get(0).state()).isEqualTo(State.SETTLED);
        assertThat(docket.blocking()).isEmpty();
        assertThat(docket.isClean()).isTrue();
    }

    @Test
    void a_pick_up_is_to_be_done_and_does_not_block_the_text_which_is_right() {
        Docket docket = after(Choice.PICKUP, butter(said(200, 200)), butter(said(200, 200)));

        assertThat(docket.toDo()).hasSize(1);
        assertThat(docket.blocking()).isEmpty();
        assertThat(docket.isClean()).isFalse();
    }

    @Test
    void a_recipe_that_is_to_be_fixed_blocks_until_it_is() {
        assertThat(after(Choice.FIX, butter(said(200, 200)), butter(said(200, 200)))
                        .blocking())
                .hasSize(1);
    }

    @Test
    void a_decision_survives_a_new_cut_that_moves_the_words() {
        Docket docket = after(Choice.KEEP, butter(said(200, 200)), butter(said(200, 345)));

        assertThat(docket.matters().get(0).state()).isEqualTo(State.SETTLED);
    }

    @Test
    void other_words_make_a_decision_stale() {
        Docket docket = after(Choice.KEEP, butter(said(200, 200)), butter(said(250, 200)));

        assertThat(docket.matters().get(0).state()).isEqualTo(State.STALE);
        assertThat(docket.undecided()).hasSize(1);
        assertThat(DocketText.of(docket)).contains("decided before it changed: decide again; it was: keep as filmed");
    }

    @Test
    void more_evidence_makes_a_decision_stale() {
        Docket docket = after(Choice.PICKUP, butter(said(200, 200)), butter(said(200, 200), said(220, 300)));

        assertThat(docket.matters().get(0).state()).isEqualTo(State.STALE);
    }

    @Test
    void another_written_amount_makes_a_decision_stale() {
        Finding before = butter(said(200, 200));
        Docket docket = after(Choice.KEEP, before, line("175 g", 150, said(200, 200)));

        assertThat(docket.matters().get(0).state()).isEqualTo(State.STALE);
    }

    @Test
    void a_right_card_settles_what_was_to_be_covered() {
        Docket docket = after(Choice.COVER, butter(said(200, 200)), butter(said(200, 200), shown(175, 201, false)));

        assertThat(docket.matters().get(0).state()).isEqualTo(State.SETTLED);
    }

    @Test
    void a_wrong_or_doubtful_card_covers_nothing() {
        assertThat(after(Choice.COVER, butter(said(200, 200)), butter(said(200, 200), shown(157, 201, false)))
                        .undecided())
                .hasSize(1);
        assertThat(after(Choice.COVER, butter(said(200, 200)), butter(said(200, 200), shown(175, 201, true)))
                        .undecided())
                .hasSize(1);
    }

    @Test
    void what_differs_no_more_is_kept_as_done() {
        Decision decision = decision(Choice.PICKUP, butter(said(200, 200)));
        Docket docket = Docket.of(new Findings("Buns", List.of()), List.of(decision));

        assertThat(docket.done()).containsExactly(decision);
        assertThat(docket.isClean()).isTrue();
        assertThat(DocketText.of(docket)).contains("Decided before, and no longer a matter");
    }

    @Test
    void a_few_words_choose_a_matter_and_unclear_ones_are_refused() {
        Finding cream = finding("top: cream", "300 ml cream", 300, said(200, 300));
        Finding cheese = finding("top: cream cheese", "100 g cream cheese", 100, said(200, 400));
        Chosen chosen = new Chosen(Docket.of(findings(butter(said(200, 200)), cream, cheese), List.of()));

        assertThat(chosen.decision("--keep", Choice.KEEP, "butter", "Nell", MONDAY, "")
                        .about())
                .isEqualTo("cake: unsalted butter");
        assertThat(chosen.decision("--keep", Choice.KEEP, "top: cream", "Nell", MONDAY, "")
                        .about())
                .isEqualTo("top: cream");
        assertThatThrownBy(() -> chosen.decision("--keep", Choice.KEEP, "cream", "Nell", MONDAY, ""))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("“top: cream” or “top: cream cheese”");
        assertThatThrownBy(() -> chosen.decision("--keep", Choice.KEEP, "unsalted buter", "Nell", MONDAY, ""))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("cake: unsalted butter");
        assertThatThrownBy(() -> chosen.decision("--keep", Choice.KEEP, " ", "Nell", MONDAY, ""))
                .isInstanceOf(BadInput.class);
    }

    @Test
    void the_pick_up_list_has_the_right_sentence_and_the_words_it_replaces() {
        Docket docket = after(Choice.PICKUP, butter(said(200, 200)), butter(said(200, 200)));

        assertThat(PickupList.of(docket)).isEqualTo("""
                Pick-ups: Buns

                1. 175 g unsalted butter (cake, step 4)
                   Say:  “One hundred and seventy-five grams of unsalted butter.”
                   In place of, at 3:20 of narration/main.vtt:
                         “so that's 200 of it now”
                   Or the same with the right words:
                         “so that's one hundred and seventy-five grams of it now”
                   Note: from memory
                """);
    }

    @Test
    void the_fix_list_says_what_each_moment_should_be() {
        Finding finding = butter(said(200, 200), said(175, 260), shown(157, 300, false));
        Docket docket = after(Choice.COVER, finding, finding);

        assertThat(FixList.of(docket)).isEqualTo("""
                To change in the film: Buns

                footage/take-1.mp4
                    5:00  the card shows “157 g”
                          → card: “175 g unsalted butter”

                narration/main.vtt
                    3:20  is said: “so that's 200 of it now”
                          → lower third: “175 g unsalted butter”
                """);
    }

    private static Docket after(Choice choice, Finding before, Finding now) {
        return Docket.of(findings(now), List.of(decision(choice, before)));
    }

    private static Decision decision(Choice choice, Finding on) {
        return new Chosen(Docket.of(findings(on), List.of()))
                .decision("--" + choice.code(), choice, on.about(), "Nell", MONDAY, "from memory");
    }

    private static Findings findings(Finding... all) {
        return new Findings("Buns", List.of(new Findings.Group(Findings.Kind.DIFFERS, Arrays.asList(all))));
    }

    private static Finding butter(Evidence... evidence) {
        return line("200 g", 175, evidence);
    }

    private static Finding line(String told, long written, Evidence... evidence) {
        return finding("cake: unsalted butter", "175 g unsalted butter", written, evidence);
    }

    private static Finding finding(String about, String what, long written, Evidence... evidence) {
        return new Finding(
                "line-1",
                about,
                Finding.Subject.LINE,
                about.substring(about.indexOf(": ") + 2),
                what,
                "cake, step 4",
                "differs",
                Confidence.FULL,
                "Said as something else.",
                "",
                Optional.of(Quantity.of(written, Unit.GRAM)),
                List.of(evidence));
    }

    private static Evidence said(long grams, int second) {
        return new Evidence(
                Via.SPOKEN,
                new Moment("narration/main.vtt", Duration.ofSeconds(second)),
                Optional.of(Quantity.of(grams, Unit.GRAM)),
                "so that's " + grams + " of it now",
                String.valueOf(grams));
    }

    private static Evidence shown(long grams, int second, boolean doubtful) {
        return new Evidence(
                Via.SHOWN,
                new Moment("footage/take-1.mp4", Duration.ofSeconds(second)),
                Optional.of(Quantity.of(grams, Unit.GRAM)),
                grams + " g",
                grams + " g",
                doubtful);
    }
}
