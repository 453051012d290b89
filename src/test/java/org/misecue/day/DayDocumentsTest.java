package org.misecue.day;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.misecue.page.Pdf;
import org.misecue.prep.Golden;
import org.w3c.dom.Document;

class DayDocumentsTest {

    private static final DayPlan PLAN = Days.plan(Days.TWO_HEATS, DaySettings.usual(Days.TEN));

    private static DayPlan nasty() {
        return Days.plan(
                Days.TWO_HEATS.replace("Toasted oat loaf", "Loaf & <script>alert(1)</script>"),
                DaySettings.usual(Days.TEN));
    }

    @Test
    void the_text_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "loaf-day.txt", DayText.of(PLAN));
    }

    @Test
    void the_json_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "loaf-day.json", DayJson.of(PLAN));
    }

    @Test
    void the_page_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "loaf-day.html", DayPage.html(PLAN, Optional.empty()));
    }

    @Test
    void the_json_keeps_the_contract() throws IOException {
        JsonNode root = new ObjectMapper().readTree(DayJson.of(PLAN));
        JsonNode task = root.at("/tasks/0");
        assertThat(task.fieldNames()).toIterable().contains("id", "what", "step", "start", "end", "who", "with");
        assertThat(LocalTime.parse(root.at("/end").asText()))
                .isEqualTo(PLAN.end().toLocalTime());
        assertThat(LocalTime.parse(root.at("/naiveEnd").asText()))
                .isAfterOrEqualTo(PLAN.end().toLocalTime());
        assertThat(root.at("/proved").isBoolean()).isTrue();
        root.at("/tasks").forEach(each -> {
            assertThat(LocalTime.parse(each.at("/start").asText())).isNotNull();
            assertThat(each.at("/who").isArray()).isTrue();
            assertThat(each.at("/with").isArray()).isTrue();
        });
    }

    @Test
    void the_drawing_is_well_formed_whatever_the_dish_is_called() throws Exception {
        String svg = Timeline.svg(nasty(), Optional.of(Days.TEN.plusHours(1)));
        Document drawing = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertThat(drawing.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(drawing.getElementsByTagName("script").getLength()).isZero();
        assertThat(svg).contains("now 11:00");
    }

    @Test
    void every_row_of_the_day_is_drawn() {
        String svg = Timeline.svg(PLAN, Optional.empty());
        PLAN.entries().forEach(entry -> assertThat(svg).contains(" " + entry.id() + " "));
    }

    @Test
    void the_page_shows_the_words_of_a_title_and_no_markup() {
        assertThat(DayPage.html(nasty(), Optional.empty()))
                .contains("Loaf &amp; &lt;script&gt;")
                .doesNotContain("<script>");
    }

    @Test
    void the_printed_sheet_names_every_row_once_in_order() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Pdf.of(DayPage.html(PLAN, Optional.empty())))) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            int from = text.indexOf("Hour by hour");
            for (Entry entry : PLAN.entries()) {
                int at = text.indexOf(
                        entry.start().toLocalTime() + "–" + entry.end().toLocalTime(), from);
                assertThat(at)
                        .as("row %d in %s", entry.id(), text.substring(from))
                        .isPositive();
                from = at;
            }
        }
    }
}
