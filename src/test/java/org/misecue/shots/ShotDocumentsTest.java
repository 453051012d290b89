package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.misecue.page.Pdf;
import org.misecue.pantry.Pantry;
import org.misecue.prep.Golden;
import org.misecue.prep.PrepPlanner;
import org.misecue.prep.PrepSettings;
import org.misecue.prep.Swirls;
import org.misecue.prep.TestKitchen;
import org.misecue.quantity.Unit;
import org.misecue.scale.ScaledRecipe;

class ShotDocumentsTest {

    private static final String NASTY = "<script>alert(1)</script>";

    private static ShotPlan plan(TestKitchen kitchen) {
        ScaledRecipe scaled = kitchen.asWritten();
        return ShotPlanner.plan(
                scaled,
                PrepPlanner.plan(
                        scaled, Pantry.standard(), PrepSettings.standard().withTakes(2)),
                ShotTemplates.standard());
    }

    private static TestKitchen nasty() {
        return new TestKitchen(NASTY)
                .component("")
                .line("10", Unit.GRAM, "=HYPERLINK(1) " + NASTY, "")
                .step("Put it in.", "", 1, 0, "0/0");
    }

    @Test
    void the_text_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "swirls-shots.txt", ShotsText.of(plan(Swirls.recipe()), ShotOrder.STORY));
    }

    @Test
    void the_page_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "swirls-shots.html", ShotsPage.html(plan(Swirls.recipe()), ShotOrder.STORY));
    }

    @Test
    void the_table_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "swirls-shots.csv", ShotsCsv.of(plan(Swirls.recipe()), ShotOrder.STORY));
    }

    @Test
    void the_json_keeps_the_contract() throws IOException {
        JsonNode shot = new ObjectMapper()
                .readTree(ShotsJson.of(plan(Swirls.recipe()), ShotOrder.STORY))
                .at("/shots/5");
        assertThat(shot.fieldNames())
                .toIterable()
                .contains("number", "step", "setup", "camera", "see", "bowls", "sound", "say", "takes", "oneChance")
                .contains("kind", "slate", "after");
        assertThat(shot.at("/number").asInt()).isEqualTo(6);
        assertThat(shot.at("/step").asInt()).isEqualTo(1);
        assertThat(shot.at("/bowls")).extracting(JsonNode::asInt).containsExactly(1, 2, 3);
        assertThat(shot.at("/oneChance").isBoolean()).isTrue();
        assertThat(shot.at("/takes").asInt()).isEqualTo(2);
    }

    @Test
    void a_script_for_a_name_stays_text() throws IOException {
        String page = ShotsPage.html(plan(nasty()), ShotOrder.STORY);
        assertThat(page).doesNotContain("<script").contains("&lt;script&gt;");
        try (PDDocument document = Loader.loadPDF(Pdf.of(page))) {
            assertThat(new PDFTextStripper().getText(document)).contains(NASTY);
        }
    }

    @Test
    void no_cell_of_the_table_is_a_formula() {
        Shot shot = plan(nasty()).shots().get(1);
        for (String start : List.of("=1+1", "+1", "-1", "@SUM(1)", "\t=1", "\r=1")) {
            Shot bad = new Shot(
                    1,
                    1,
                    List.of(),
                    "x",
                    ShotKind.ACTION,
                    start,
                    start,
                    start,
                    start,
                    List.of(),
                    start,
                    List.of(new Saying("", start, "")),
                    start,
                    1,
                    false,
                    List.of(new Hazard(start, start)),
                    List.of());
            String row = ShotsCsv.of(new ShotPlan("t", List.of(shot, bad), Map.of()), ShotOrder.STORY);
            assertThat(row)
                    .doesNotContain("," + start)
                    .doesNotContain("\"" + start)
                    .contains("'" + start);
        }
    }
}
