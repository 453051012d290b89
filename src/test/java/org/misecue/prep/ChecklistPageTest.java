package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.misecue.page.Pdf;
import org.misecue.pantry.Pantry;
import org.misecue.prep.LabelSheet.Paper;

class ChecklistPageTest {

    private static PrepPlan plan(int takes) {
        return PrepPlanner.plan(
                Swirls.recipe().asWritten(),
                Pantry.standard(),
                PrepSettings.standard().withTakes(takes).withFirstShot(LocalDateTime.parse("2026-03-10T10:00")));
    }

    /** Read at arm's length: 16 points or more, common practice, no source. */
    @ParameterizedTest
    @EnumSource
    void everything_is_on_two_pages_in_letters_of_16_points_or_more(Paper paper) {
        PrepPlan plan = plan(2);
        Glyphs glyphs = Glyphs.of(Pdf.of(ChecklistPage.html(plan, paper)));
        assertThat(glyphs.pages()).isLessThanOrEqualTo(2);
        assertThat(glyphs.all()).isNotEmpty().allSatisfy(glyph -> {
            assertThat(glyph.points()).isGreaterThanOrEqualTo(16);
            assertThat(glyph.left()).isBetween(5.0, paper.width());
            assertThat(glyph.right()).isLessThan(paper.width() - 5);
            assertThat(glyph.bottom()).isLessThan(paper.height() - 5);
        });
        String text = glyphs.text();
        plan.bowlsOf(1).forEach(bowl -> assertThat(text).contains(bare(PrepWords.inShort(bowl))));
        plan.jobs().forEach(job -> assertThat(text).contains(bare(PrepWords.clockOrAhead(job) + job.what())));
        plan.kit().forEach(item -> assertThat(text).contains(bare(item.what())));
        plan.shopping().forEach(purchase -> assertThat(text).contains(bare(PrepWords.bought(purchase))));
        assertThat(text).contains(bare("used or back in the fridge by Tue 11:40"), bare("local food law"));
    }

    @Test
    void a_ticked_box_is_filled() {
        PrepPlan plan = plan(2);
        String open = ChecklistPage.html(plan, Paper.A4);
        assertThat(open).doesNotContain("box done");
        PrepPlan done = plan.withTicks(Set.copyOf(TickList.keys(plan, "--tick", "3,A")));
        assertThat(ChecklistPage.html(done, Paper.A4).split("box done", -1)).hasSize(4);
        assertThat(PrepPage.html(done).split("box done", -1)).hasSize(4);
        assertThat(PrepText.of(done).split("\\[x]", -1)).hasSize(4);
    }

    private static String bare(String text) {
        return text.replaceAll("\\s", "");
    }
}
