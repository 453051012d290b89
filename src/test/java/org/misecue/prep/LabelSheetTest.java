package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.TEASPOON;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;
import org.misecue.page.Pdf;
import org.misecue.pantry.Pantry;

class LabelSheetTest {

    private static PrepPlan plan(TestKitchen kitchen, int takes) {
        return PrepPlanner.plan(
                kitchen.asWritten(), Pantry.standard(), PrepSettings.standard().withTakes(takes));
    }

    /** A dry mix of ten on one label is the worst that recipes bring. */
    private static TestKitchen spiced() {
        TestKitchen kitchen = new TestKitchen("Spiced biscuits")
                .component("dark biscuits for the bottom")
                .line("225", GRAM, "wholemeal self-raising flour", "");
        List<String> spices = List.of(
                "ground cinnamon",
                "ground ginger",
                "ground cardamom",
                "ground cloves",
                "mixed spice",
                "fine salt",
                "baking powder",
                "bicarbonate of soda",
                "cocoa powder");
        spices.forEach(spice -> kitchen.line("1.5", TEASPOON, spice, ""));
        return kitchen.step(
                "Whisk the flour with all the spices.",
                "whisk",
                2,
                0,
                "0/0",
                "0/1",
                "0/2",
                "0/3",
                "0/4",
                "0/5",
                "0/6",
                "0/7",
                "0/8",
                "0/9");
    }

    @ParameterizedTest
    @CsvSource({"A4, 3x8, 3, 45", "Letter, 2x5, 2, 30", "A4, 3x7, 1, 15", "Letter, 3x10, 3, 45", "A4, 1x1, 1, 15"})
    void every_label_sits_in_its_cell_and_the_pages_are_as_many_as_needed(
            String paper, String grid, int takes, int labels) {
        PrepPlan plan = plan(Swirls.recipe(), takes);
        LabelSheet sheet = LabelSheet.of(paper, grid);
        Glyphs glyphs = Glyphs.of(Pdf.of(LabelPage.html(plan, sheet)));
        assertThat(plan.bowls()).hasSize(labels);
        assertThat(glyphs.pages()).isEqualTo((labels + sheet.perPage() - 1) / sheet.perPage());
        check(plan, sheet, glyphs);
    }

    @ParameterizedTest
    @CsvSource({"A4, 3x8", "Letter, 2x5", "A4, 3x9"})
    void a_long_dry_mix_is_set_smaller_and_not_cut(String paper, String grid) {
        PrepPlan plan = plan(spiced(), 1);
        assertThat(plan.bowls()).hasSize(1);
        LabelSheet sheet = LabelSheet.of(paper, grid);
        check(plan, sheet, Glyphs.of(Pdf.of(LabelPage.html(plan, sheet))));
    }

    private static PrintedLabel label(PrepPlan plan, int index, LabelSheet sheet) {
        Bowl bowl = plan.bowls().get(index);
        return PrintedLabel.of(plan, LabelPage.set(plan, bowl), bowl, sheet);
    }

    /** Each label's letters, all of them, lie in its cell; nothing else lies in any cell. */
    private static void check(PrepPlan plan, LabelSheet sheet, Glyphs glyphs) {
        int seen = 0;
        for (int i = 0; i < plan.bowls().size(); i++) {
            PrintedLabel label = label(plan, i, sheet);
            int page = i / sheet.perPage();
            double left = sheet.left(i % sheet.perPage());
            double top = sheet.top(i % sheet.perPage());
            List<Glyphs.Glyph> inside = glyphs.all().stream()
                    .filter(glyph -> glyph.page() == page
                            && glyph.left() >= left
                            && glyph.right() <= left + sheet.width()
                            && glyph.top() >= top
                            && glyph.bottom() <= top + sheet.height())
                    .toList();
            StringBuilder wanted =
                    new StringBuilder().append(label.bowl().number()).append(label.set());
            label.lines().forEach(line -> wanted.append(line.text()));
            assertThat(sorted(Glyphs.joined(inside))).isEqualTo(sorted(wanted.toString()));
            assertThat(inside)
                    .filteredOn(glyph -> glyph.points() >= 24)
                    .extracting(Glyphs.Glyph::text)
                    .containsExactly(String.valueOf(label.bowl().number()).split(""));
            seen += inside.size();
        }
        int law = PrepPlan.LAW.replace(" ", "").length() * glyphs.pages();
        assertThat(glyphs.all()).hasSize(seen + law);
    }

    private static String sorted(String text) {
        return text.replace(" ", "")
                .chars()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    @Test
    void a_label_too_small_to_read_is_refused() {
        PrepPlan plan = plan(spiced(), 1);
        LabelSheet sheet = LabelSheet.of("Letter", "4x10");
        assertThatThrownBy(() -> LabelPage.html(plan, sheet))
                .hasMessage("--grid: what belongs on the label of bowl 1 cannot be read at 4x10;"
                        + " take fewer labels to a sheet.");
    }

    @Test
    void allergens_and_what_to_mind_stand_on_the_label() {
        PrepPlan plan = plan(Swirls.recipe(), 1);
        assertThat(label(plan, 5, LabelSheet.USUAL).lines())
                .extracting(PrintedLabel.Line::text)
                .contains("Contains EGGS")
                .anyMatch(line -> line.contains("Raw egg: nobody tastes"));
    }

    @ParameterizedTest
    @CsvSource({
        "A4, 9x9, '--grid: 9x9 labels would be 22 × 31 mm on A4; take fewer, so that each has at least 40 × 24 mm.'",
        "A4, 0x3, '--grid: expected columns and rows of labels such as 3x8, not “0x3”.'",
        "A4, three, '--grid: expected columns and rows of labels such as 3x8, not “three”.'",
        "A5, 3x8, '--paper: paper is A4 or Letter, not “A5”.'",
    })
    void paper_and_grid_that_do_not_work_are_refused_in_one_sentence(String paper, String grid, String sentence) {
        assertThatThrownBy(() -> LabelSheet.of(paper, grid))
                .isInstanceOf(BadInput.class)
                .hasMessage(sentence);
    }
}
