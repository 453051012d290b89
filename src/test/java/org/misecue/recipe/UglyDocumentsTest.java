package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plain buns in documents as they lie about, with all that programs leave in them. */
class UglyDocumentsTest {

    private static final String WORD =
            "<w:document xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"><w:body>";
    private static final String ODT =
            "<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\""
                    + " xmlns:text=\"urn:oasis:names:tc:opendocument:xmlns:text:1.0\"><office:body><office:text>";

    @TempDir
    Path folder;

    private record Ugly(String extension, byte[] bytes) {}

    static Stream<Named<Ugly>> documents() throws IOException {
        return Stream.of(
                Named.of("Word with tracked changes and hidden words", new Ugly("docx", FuzzSeeds.docx(changedWord()))),
                Named.of("OpenDocument with a deletion and a comment", new Ugly("odt", FuzzSeeds.odt(changedOdt()))),
                ugly("RTF with a running head and a deletion", "rtf", RTF),
                ugly(
                        "data with all ingredients on lines of one string",
                        "html",
                        data("\"200 g flour\\n80 g butter\\n1 tsp salt\"")),
                ugly(
                        "data with all ingredients behind commas",
                        "html",
                        data("[\"200 g flour, 80 g butter, 1 tsp salt\"]")),
                ugly(
                        "data with tags within the strings",
                        "html",
                        data("[\"<p>200&nbsp;g flour</p><p>80 g butter</p>\",\"1 tsp salt<br>\"]")),
                ugly(
                        "data under the old names",
                        "html",
                        data("[\"200 g flour\",\"80 g butter\",\"1 tsp salt\"]")
                                .replace("recipeIngredient", "ingredients")
                                .replace("recipeYield", "yield")),
                ugly("a page with an advertisement in the list", "html", PAGE),
                ugly("Markdown with settings, tags and code", "md", MARKDOWN));
    }

    private static Named<Ugly> ugly(String name, String extension, String text) {
        return Named.of(name, new Ugly(extension, text.getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void only_what_is_meant_to_be_read_is_read(Ugly ugly) throws IOException {
        Path file = Files.write(folder.resolve("buns." + ugly.extension()), ugly.bytes());
        Recipe recipe = RecipeReader.read(file, file.getFileName().toString());
        assertThat(recipe.title()).isEqualTo("Buns");
        assertThat(recipe.settings()).extracting(Setting::what).contains("buns");
        assertThat(recipe.lines())
                .extracting(IngredientLine::text)
                .containsExactly("200 g flour", "80 g butter", "1 tsp salt");
        assertThat(recipe.steps())
                .extracting(Step::text)
                .containsExactly("Mix the flour, butter and salt.", "Bake for 20 minutes.");
        assertThat(recipe.notes()).isEmpty();
    }

    @Test
    void a_list_in_a_list_is_a_part_of_the_dish() throws IOException {
        String text = "# Buns\n\nMakes 12 buns\n\n## Ingredients\n\n* Dough\n  * 200 g flour\n* Glaze\n  1. 1 egg\n\n"
                + "## Method\n\n1. Brush the flour with egg.\n";
        Recipe recipe = RecipeReader.read(Files.writeString(folder.resolve("r.md"), text), "r.md");
        assertThat(recipe.components()).extracting(Component::name).containsExactly("dough", "glaze");
        assertThat(recipe.lines()).extracting(IngredientLine::text).containsExactly("200 g flour", "1 egg");
    }

    @Test
    void lists_of_steps_within_steps_lose_none() throws IOException {
        String page = data("[\"200 g flour\",\"80 g butter\",\"1 tsp salt\"]")
                .replace(
                        STEPS,
                        "{\"@type\":\"ItemList\",\"itemListElement\":[{\"item\":{\"text\":\"Mix the flour, butter and salt.\"}},"
                                + "{\"text\":\"Bake for 20 minutes.\",\"itemListElement\":[]}]}");
        Recipe recipe = RecipeReader.read(Files.writeString(folder.resolve("r.html"), page), "r.html");
        assertThat(recipe.steps())
                .extracting(Step::text)
                .containsExactly("Mix the flour, butter and salt.", "Bake for 20 minutes.");
    }

    private static String changedWord() {
        return WORD + p("Buns") + p("Makes 12 buns") + p("Ingredients")
                + "<w:p>" + run("200 g ")
                + "<w:del w:id=\"1\"><w:r><w:delText>rye </w:delText></w:r></w:del><w:ins w:id=\"2\">"
                + run("flour") + "</w:ins></w:p>"
                + "<w:p><w:moveFrom w:id=\"3\">" + run("1 tsp salt") + "</w:moveFrom></w:p>" + p("80 g butter")
                + "<w:p><w:moveTo w:id=\"4\">" + run("1 tsp salt") + "</w:moveTo></w:p>"
                + "<w:p><w:r><w:rPr><w:vanish/></w:rPr><w:t>60 g lard</w:t></w:r></w:p>" + p("Method")
                + p("Mix the flour, butter and salt.") + p("Bake for 20 minutes.") + "</w:body></w:document>";
    }

    private static String p(String text) {
        return "<w:p>" + run(text) + "</w:p>";
    }

    private static String run(String text) {
        return "<w:r><w:t xml:space=\"preserve\">" + text + "</w:t></w:r>";
    }

    private static String changedOdt() {
        return ODT
                + "<text:tracked-changes><text:changed-region><text:deletion><text:p>900 g lard</text:p></text:deletion>"
                + "</text:changed-region></text:tracked-changes><text:h text:outline-level=\"1\">Buns</text:h>"
                + "<text:p>Makes<text:s text:c=\"2\"/>12 buns</text:p><text:section><text:h text:outline-level=\"2\">Ingredients</text:h>"
                + "<text:p>200 g<text:tab/>flour<text:line-break/>80 g butter<office:annotation><text:p>use 300 g flour</text:p>"
                + "</office:annotation></text:p><text:p>1 tsp salt</text:p></text:section><text:h text:outline-level=\"2\">Method</text:h>"
                + "<text:p>Mix the flour, butter and salt.</text:p><text:p>Bake for 20 minutes.</text:p>"
                + "</office:text></office:body></office:document-content>";
    }

    private static final String RTF = "{\\rtf1\\ansi{\\fonttbl{\\f0 X;}}{\\header Our book\\par}{\\footer 3\\par}"
            + "{\\pard\\b Buns\\b0\\par}{\\pard Makes 12 buns\\par}{\\pard Ingredients\\par}"
            + "{\\pard 200 g flour\\line 80 g butter\\line 1 tsp salt\\par}{\\deleted 900 g {\\i lard\\}}\\par}"
            + "{\\pard Method\\par}{\\pard Mix the flour, butter and salt.\\par}{\\pard Bake for 20 minutes.\\par}}";

    private static final String STEPS = "[\"Mix the flour, butter and salt.\",\"Bake for 20 minutes.\"]";

    private static String data(String ingredients) {
        return "<html><script type=\"application/ld+json\">{\"@type\":[\"Thing\",\"Recipe\"],\"name\":\"Buns\",\"recipeYield\":\"12 buns\","
                + "\"recipeIngredient\":" + ingredients + ",\"recipeInstructions\":" + STEPS + "}</script></html>";
    }

    private static final String PAGE =
            "<html><body><h1>Buns</h1><p>Makes 12 buns</p><p><b>Ingredients:</b><br>200 g flour<br>"
                    + "80 g butter<br/>1 tsp salt</p><ins class=\"adsbygoogle\"><p>2 cups for free</p></ins><p><strong>Method</strong></p>"
                    + "<p>1. Mix the flour, butter and salt.</p><div class=\"advertisement\">300 g</div><p>2. Bake for 20 minutes.</p></body></html>";

    private static final String MARKDOWN =
            "---\ntitle: Buns\ntags: [x, y]\n---\n\n<p align=\"center\">Makes 12 buns</p>\n\n"
                    + "## Ingredients\n\n<ul>\n<li>200 g flour</li>\n<li>80 g butter</li>\n</ul>\n\n"
                    + "<table><tr><td>1 tsp</td><td>salt</td></tr></table>\n\n<!-- 900 g lard -->\n\n## Method\n\n"
                    + "```\nMix the flour, butter and salt.\n```\n\nBake for <em>20</em> minutes.\n";
}
