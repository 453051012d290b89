package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Text from recipes and speech is data. An episode that tries to be markup, script, formula, template and address goes
 * through everything that is made; jsoup, an XML parser and CSV and JSON readers look at what comes out.
 */
class NastyEpisodeTest {

    @TempDir
    static Path folder;

    private static OnStage stage;
    private static ServerSocket ear;
    private static final AtomicInteger CALLS = new AtomicInteger();

    @BeforeAll
    static void everything_is_made() throws IOException {
        ear = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        Thread listener = new Thread(() -> {
            while (!ear.isClosed()) {
                try (Socket call = ear.accept()) {
                    CALLS.incrementAndGet();
                } catch (IOException closed) {
                    return;
                }
            }
        });
        listener.setDaemon(true);
        listener.start();
        String address = "http://127.0.0.1:" + ear.getLocalPort() + "/pixel.png";
        Path secret = Files.writeString(folder.resolve("secret.txt"), "the-secret-of-this-machine");
        stage = new OnStage(folder);
        stage.write("nasty/recipe.md", """
                # </script><script>alert('title')</script> & "buns" {{title}} \u202Egnp.exe

                Makes 12

                ## Ingredients

                ### =cmd|' /C calc'!A1

                - 100 g =HYPERLINK("%1$s") sugar
                - 200 g <img src=x onerror=alert(1)> flour
                - 50 g {{{json-ld}}} butter
                - 30 g +1+1 honey
                - 3 eggs <!-- <script>
                - 20 g ]]> @SUM(A1) milk
                - 10 g ${java:version} <%%= 7*7 %%> cream\u0007
                - 5 g %3$s

                ## Method

                1. =1+1 Mix </style><script src="%1$s"></script> the flour and sugar ![pixel](%1$s).
                2. @import url("%1$s"); bake at 180 °C for 20 minutes <a href="javascript:alert(2)">here</a>.
                3. Look at <img src="%1$s"/> <link rel="stylesheet" href="%2$s"/> and file://%2$s \u2028 done.
                """.formatted(address, secret, "x".repeat(10_000)));
        stage.write(
                "nasty/narration/main.vtt",
                "WEBVTT\n\n00:01.000 --> 00:09.000\n&lt;script&gt;alert(3)&lt;/script&gt; two hundred grams of sugar =1+1 and it's dairy free\n\n"
                        + "00:10.000 --> 00:20.000\n</script> a teaspoon of \"=cmd\" cardamom @SUM(1)\n");
        stage.write("nasty/episode.yaml", "title: \"=1+1 <b>{{url}}</b> </script>\"\n");
        assertThat(stage.run("make", "nasty").exit()).isZero();
        assertThat(stage.run("decide", "nasty", "--sign-off", "--note", "=1<script>", "--pickup", "added")
                        .exit())
                .isNotEqualTo(ExitCode.OUR_FAULT);
        assertThat(stage.run("describe", "nasty", "--html", "--pdf").exit()).isZero();
        assertThat(stage.run("compare", "nasty", "--html").exit()).isEqualTo(ExitCode.DIFFERS);
    }

    @AfterAll
    static void nobody_listens_any_more() throws IOException {
        ear.close();
    }

    private static List<Path> made(String ending) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve("nasty/out"))) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void no_page_has_a_script_an_address_or_a_handler_of_the_recipe() throws Exception {
        List<Path> pages = made(".html");
        assertThat(pages).hasSizeGreaterThanOrEqualTo(5);
        for (Path file : pages) {
            Document page = Jsoup.parse(Files.readString(file));
            assertThat(page.select("script"))
                    .as("%s", file)
                    .allMatch(script -> script.attr("type").equals("application/ld+json")
                            && script.attr("src").isEmpty());
            assertThat(page.select("img[src^=http], link, iframe, object, embed, base, form"))
                    .as("%s", file)
                    .isEmpty();
            for (Element element : page.getAllElements()) {
                element.attributes().forEach(attribute -> {
                    assertThat(attribute.getKey()).as("%s", file).doesNotStartWith("on");
                    assertThat(attribute.getValue()).as("%s", file).doesNotContainIgnoringCase("javascript:");
                });
            }
            assertThat(page.select("[href^=http], [href^=file], [src^=file]"))
                    .as("%s", file)
                    .isEmpty();
        }
    }

    @Test
    void the_pages_that_are_printed_are_well_formed() throws Exception {
        for (String name : List.of("prep.html", "shots.html", "day.html", "recipe.html")) {
            String page = Files.readString(folder.resolve("nasty/out/" + name)).replace("<!DOCTYPE html>", "");
            DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
        }
    }

    @Test
    void nothing_is_fetched_and_no_file_of_the_machine_is_read() throws IOException {
        assertThat(CALLS).hasValue(0);
        for (Path file : made("")) {
            if (Files.isRegularFile(file)) {
                assertThat(Files.readString(file, StandardCharsets.ISO_8859_1))
                        .as("%s", file)
                        .doesNotContain("the-secret-of-this-machine");
            }
        }
    }

    @Test
    void no_cell_of_a_table_is_a_formula() throws IOException {
        assertThat(made(".csv")).isNotEmpty();
        for (Path file : made(".csv")) {
            try (var rows = new CsvMapper()
                    .enable(CsvParser.Feature.WRAP_AS_ARRAY)
                    .readerFor(String[].class)
                    .<String[]>readValues(Files.readString(file))) {
                while (rows.hasNext()) {
                    for (String cell : rows.next()) {
                        assertThat(cell)
                                .doesNotStartWith("=")
                                .doesNotStartWith("+")
                                .doesNotStartWith("@")
                                .doesNotStartWith("-");
                    }
                }
            }
        }
    }

    @Test
    void the_data_is_whole_and_cannot_end_its_element() throws IOException {
        String data = Files.readString(folder.resolve("nasty/out/recipe.jsonld"));
        assertThat(data).doesNotContain("<").doesNotContain(">").doesNotContain("\u2028");
        JsonNode json = new ObjectMapper().readTree(data);
        assertThat(json.get("recipeIngredient")).hasSizeGreaterThanOrEqualTo(7);
        JsonNode inPage = new ObjectMapper()
                .readTree(Jsoup.parse(Files.readString(folder.resolve("nasty/out/recipe.html")))
                        .select("script")
                        .first()
                        .data());
        assertThat(inPage).isEqualTo(json);
    }

    @Test
    void templates_and_directions_in_the_text_stay_text() throws IOException {
        String text = Files.readString(folder.resolve("nasty/out/description.txt"));
        assertThat(text).contains("{{title}}").doesNotContain("\u202E").doesNotContain("\u0007");
        assertThat(text.replaceFirst("(?s)^DRAFT.*?\n\n", "")).hasSizeLessThanOrEqualTo(5000);
        String page = Files.readString(folder.resolve("nasty/out/recipe.html"));
        assertThat(page).doesNotContain("\u202E").contains("{{title}}");
    }
}
