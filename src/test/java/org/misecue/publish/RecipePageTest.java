package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.page.Pdf;
import org.misecue.quantity.QuantityWriter;
import org.misecue.scale.WeighedLine;

/** The web page and its print; jsoup and PDFBox read them as a viewer's browser and printer would. */
class RecipePageTest {

    static Stream<Path> recipes() {
        return TestEditions.recipes().stream();
    }

    private static String page(Edition edition) {
        return RecipePage.html(edition, DescriptionSettings.usual(), PublishTemplates.standard());
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void the_page_and_its_print_have_every_line_with_its_amount_and_every_step(Path recipe) throws Exception {
        Edition edition = TestEditions.of(recipe);
        String html = page(edition);
        String text = Jsoup.parse(html).text();
        String print;
        try (PDDocument document = Loader.loadPDF(Pdf.of(html))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            // The font joins "fl" in one sign.
            print = Normalizer.normalize(stripper.getText(document), Normalizer.Form.NFKC)
                    .replaceAll("\\s+", "");
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(4);
        }
        for (WeighedLine line : edition.batch().lines()) {
            line.weighed().map(QuantityWriter::text).ifPresent(amount -> assertThat(text)
                    .contains(amount));
            String name = line.written().ingredient();
            // "zest of an orange" is called orange zest, and stands as it is written.
            boolean literal = line.written().text().contains(name);
            if (literal) {
                assertThat(text).containsIgnoringCase(name);
                assertThat(print).containsIgnoringCase(name.replace(" ", ""));
            }
        }
        edition.recipe().steps().forEach(step -> assertThat(text)
                .contains(Jsoup.parse(SafeText.line(step.text())).text()));
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void the_page_is_well_formed_and_carries_the_data(Path recipe) throws Exception {
        Edition edition = TestEditions.of(recipe);
        String html = page(edition);

        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(
                        html.replace("<!DOCTYPE html>", "").getBytes(StandardCharsets.UTF_8)));
        Document parsed = Jsoup.parse(html);
        JsonNode inside = new ObjectMapper()
                .readTree(parsed.select("script[type=application/ld+json]")
                        .first()
                        .data());
        assertThat(inside).isEqualTo(new ObjectMapper().readTree(SchemaOrg.json(edition)));
        assertThat(parsed.select("h1")).hasSize(1);
        assertThat(parsed.select("html").attr("lang")).isEqualTo("en");
    }

    @Test
    void allergens_stand_out_by_more_than_colour() throws IOException {
        Document page = Jsoup.parse(page(TestEditions.of(TestEditions.recipes().get(0))));
        assertThat(page.select("li strong")).isNotEmpty();
        assertThat(page.text()).contains("the label on your own packet comes first");
    }

    @Test
    void a_draft_says_so_on_the_page_and_in_the_data() {
        Edition draft = TestEditions.of(TestEditions.recipes().get(0)).asDraft(Optional.of("DRAFT – not yet."));
        assertThat(Jsoup.parse(page(draft)).text()).contains("DRAFT – not yet.");
        assertThat(SchemaOrg.json(draft)).contains("\"creativeWorkStatus\" : \"Draft\"");
        assertThat(SchemaOrg.json(TestEditions.of(TestEditions.recipes().get(0))))
                .doesNotContain("creativeWorkStatus");
    }
}
