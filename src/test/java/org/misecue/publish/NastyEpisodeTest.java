package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Moment;
import org.misecue.offers.Offer;
import org.misecue.pantry.Pantry;
import org.misecue.scale.Batch;

/** An episode whose texts want to be code: in everything that is published they stay texts. */
class NastyEpisodeTest {

    @TempDir
    private Path folder;

    private Edition edition;

    @BeforeEach
    void read() throws IOException {
        String text = new String(
                NastyEpisodeTest.class.getResourceAsStream("nasty.md").readAllBytes(), StandardCharsets.UTF_8);
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(
                recipe,
                text.replace("LONG", "x".repeat(10_000))
                        .replace("BIDI", "\u202egnp.\u202c\u2066")
                        .replace("CONTROL", "a\u0007b\u0001c\u2028d"));
        edition = Edition.of(TestEditions.scaled(recipe, Batch.WRITTEN), Pantry.standard())
                .with(List.of(new Offer(
                        "</script><b>milk",
                        "{{title}} \"oil\" <img src=http://127.0.0.1/>",
                        Optional.empty(),
                        new Moment("main.vtt", Duration.ZERO),
                        "")))
                .with(TestEditions.everywhere());
    }

    @Test
    void the_description_is_plain_text_of_whole_lines_without_addresses() {
        String text = Describer.describe(edition, DescriptionSettings.usual().withLimit(50_000))
                .text();

        assertThat(text.codePoints())
                .noneMatch(point -> point == '<' || point == '>' || point != '\n' && Character.isISOControl(point))
                .noneMatch(point -> point >= 0x202A && point <= 0x202E || point >= 0x2066 && point <= 0x2069);
        assertThat(text).doesNotContain("javascript:", "http:", "file:").contains("{{x}}", "=cmd()");
    }

    @Test
    void in_the_page_nothing_of_it_is_an_element_and_nothing_is_loaded() throws IOException {
        String page = RecipePage.html(edition, DescriptionSettings.usual(), PublishTemplates.standard());
        Document parsed = Jsoup.parse(page);

        assertThat(parsed.select("script")).hasSize(1);
        assertThat(parsed.select("img, b, iframe, link, object, embed, [src], [href], [onerror], [onclick]"))
                .isEmpty();
        assertThat(page).doesNotContain("\u202e", "\u0007", "\u0001");
        assertThat(new ObjectMapper()
                        .readTree(parsed.selectFirst("script").data())
                        .get("@type")
                        .asText())
                .isEqualTo("Recipe");
        assertThat(parsed.selectFirst("h1").text()).isEqualTo("‹script›alert(1)‹/script›‹b› {{x}} \"quoted\"");
    }

    @Test
    void its_data_is_valid_and_ends_no_element() throws IOException {
        String json = SchemaOrg.json(edition);

        assertThat(json).doesNotContain("<", ">", "&", "\u2028");
        assertThat(Vocabulary.read().faults(new ObjectMapper().readTree(json))).isEmpty();
    }

    /** A port that is asked, or a file of this machine that is drawn, would be told here. */
    @Test
    void printing_a_page_that_names_a_port_and_a_file_fetches_neither() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the-secret-words");
        try (ServerSocket port = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            String address = "http://127.0.0.1:" + port.getLocalPort() + "/picture.png";
            Path own = Files.createDirectory(folder.resolve("publish-templates"));
            Files.writeString(own.resolve("recipe.html"), """
                    <html><head><title>x</title><link rel="stylesheet" href="%1$s"/>
                    <style>@import url(%1$s); body { background: url(%1$s); }</style></head>
                    <body><p>{{title}}</p><img src="%1$s"/><img src="%2$s"/>
                    <object data="%2$s" type="text/plain"></object><iframe src="%2$s"></iframe></body></html>
                    """.formatted(address, secret.toUri()));

            byte[] pdf = RecipePage.pdf(
                    edition,
                    DescriptionSettings.usual(),
                    PublishTemplates.withOwn(java.util.Map.of("publish-templates", own)));

            assertThat(textOf(pdf)).contains("alert(1)").doesNotContain("the-secret-words");
            port.setSoTimeout(300);
            assertThat(asked(port)).isFalse();
        }
    }

    @Test
    void it_prints() throws IOException {
        byte[] pdf = RecipePage.pdf(edition, DescriptionSettings.usual(), PublishTemplates.standard());

        assertThat(textOf(pdf)).contains("{{x}}", "=cmd()");
    }

    private static boolean asked(ServerSocket port) throws IOException {
        try {
            port.accept().close();
            return true;
        } catch (SocketTimeoutException nobody) {
            return false;
        }
    }

    private static String textOf(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }
}
