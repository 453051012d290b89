package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.LocalDateTime;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.misecue.page.Pdf;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;

class PrepDocumentsTest {

    private static final String NASTY = "<script>alert(1)</script>";

    private static PrepPlan plan(String title, int takes) {
        return PrepPlanner.plan(
                Swirls.recipe(title).scaled(Rationals.of(2)),
                Pantry.standard(),
                PrepSettings.standard().withTakes(takes).withFirstShot(LocalDateTime.parse("2026-03-10T10:00")));
    }

    private static PrepPlan swirls() {
        return plan("Plum and cardamom swirls", 1);
    }

    @Test
    void the_text_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "swirls-prep.txt", PrepText.of(swirls()));
    }

    @Test
    void the_page_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "swirls-prep.html", PrepPage.html(swirls()));
    }

    @Test
    void the_labels_read_as_in_the_golden_file() {
        Golden.check(getClass(), "swirls-labels.html", LabelPage.html(plan("Plum and cardamom swirls", 2)));
    }

    @Test
    void the_json_keeps_the_contract() throws IOException {
        JsonNode root = new ObjectMapper().readTree(PrepJson.of(swirls()));
        JsonNode bowl = root.at("/bowls/0");
        assertThat(bowl.fieldNames())
                .toIterable()
                .contains("number", "component", "step", "take", "contents", "allergens");
        assertThat(bowl.at("/contents/0/ingredient").asText()).isEqualTo("strong white bread flour");
        assertThat(bowl.at("/contents/0/amount").decimalValue()).isEqualByComparingTo("1000");
        assertThat(bowl.at("/contents/0/unit").asText()).isEqualTo("g");
        assertThat(bowl.at("/contents/0/grams").decimalValue()).isEqualByComparingTo("1000");
        assertThat(bowl.at("/allergens/0").asText()).isEqualTo("cereals containing gluten");
        JsonNode job = root.at("/jobs/0");
        assertThat(job.at("/what").asText()).isEqualTo("Take the butter out of the fridge");
        assertThat(job.at("/before").asText()).isEqualTo("PT2H");
        assertThat(job.at("/for").asText()).isEqualTo("bowls 7 and 11, step 2");
        assertThat(job.at("/at").asText()).isEqualTo("2026-03-10T08:05");
        assertThat(job.at("/why").isTextual()).isTrue();
        assertThat(root.at("/kit").isArray()).isTrue();
        assertThat(root.at("/shopping/0").fieldNames()).toIterable().contains("ingredient", "amount", "unit");
    }

    @Test
    void a_script_for_a_name_stays_text() throws IOException {
        PrepPlan plan = plan(NASTY, 1);
        for (String page : new String[] {PrepPage.html(plan), LabelPage.html(plan)}) {
            assertThat(page).doesNotContain("<script").contains("&lt;script&gt;");
        }
        assertThat(printed(PrepPage.html(plan))).contains(NASTY);
    }

    @Test
    void the_pdf_holds_every_bowl_and_the_fractions() throws IOException {
        String text = printed(PrepPage.html(swirls()));
        assertThat(text).contains("Plum and cardamom swirls", "3 tsp", "Start ahead", "Shopping");
        assertThat(printed(LabelPage.html(swirls()))).contains("Icing sugar", "240 g");
        assertThat(printed("<html><body><p>1⅛ tsp, 1⅓ tsp, ½ tsp</p></body></html>"))
                .contains("1⅛ tsp, 1 1/3 tsp, ½ tsp");
    }

    @Test
    void the_same_plan_gives_the_same_bytes() {
        assertThat(PrepPage.html(swirls())).isEqualTo(PrepPage.html(swirls()));
        assertThat(PrepJson.of(swirls())).isEqualTo(PrepJson.of(swirls()));
    }

    private static String printed(String page) throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(page))) {
            return new PDFTextStripper().getText(document);
        }
    }
}
