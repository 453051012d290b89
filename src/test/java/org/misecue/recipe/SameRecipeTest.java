package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.quantity.QuantityWriter;

/** However a recipe is kept, in whatever kind of document and layout, it reads the same. */
class SameRecipeTest {

    @TempDir
    Path folder;

    private record Kept(String extension, byte[] bytes) {}

    static Stream<Named<Kept>> documents() throws IOException {
        return Stream.of(
                kept("Markdown with lists", "md", TextDocuments.markdown("- ")),
                kept("Markdown with a list to tick off", "md", TextDocuments.markdown("- [ ] ")),
                kept("Markdown with tables", "md", TextDocuments.markdownTables()),
                kept("Markdown with bold words for headings", "md", TextDocuments.boldMarkdown()),
                kept("plain text", "txt", TextDocuments.text()),
                kept("Markdown in a file named as text", "txt", TextDocuments.boldMarkdown()),
                kept("Markdown with tables in a file named as text", "txt", TextDocuments.markdownTables()),
                kept("plain text in a file named as Markdown", "md", TextDocuments.text()),
                kept("a mail, quoted, broken and signed", "txt", TextDocuments.mail()),
                kept("a saved mail in UTF-8", "eml", MailDocuments.alternatives("UTF-8")),
                kept("a saved mail in windows-1252", "eml", MailDocuments.alternatives("windows-1252")),
                kept("a saved mail in base64 with a picture", "eml", MailDocuments.base64()),
                kept("a saved mail that is a page", "eml", MailDocuments.page()),
                kept("a saved mail, flowed, quoted and signed", "eml", MailDocuments.flowed()),
                kept("a saved mail in a file named as text", "txt", MailDocuments.alternatives("UTF-8")),
                kept("Word with lists", "docx", WordDocuments.lists()),
                kept("Word with tables", "docx", WordDocuments.tables()),
                kept("Word with two columns of ingredients", "docx", WordDocuments.columns()),
                kept("Word with the method beside the ingredients", "docx", WordDocuments.sideBySide()),
                kept("Word with lines broken by hand", "docx", WordDocuments.brokenByHand()),
                kept("Word with a text box", "docx", WordDocuments.textBox()),
                kept("OpenDocument with lists", "odt", OtherDocuments.odt(false)),
                kept("OpenDocument with tables", "odt", OtherDocuments.odt(true)),
                kept("RTF with bullets", "rtf", OtherDocuments.rtf(false)),
                kept("RTF with tables", "rtf", OtherDocuments.rtf(true)),
                kept("PDF in one column", "pdf", OtherDocuments.pdf(false)),
                kept("PDF in two columns", "pdf", OtherDocuments.pdf(true)),
                kept("PDF in two columns drawn row by row", "pdf", PdfDocuments.besideByRows(0)),
                kept("PDF in two columns whose lines are not level", "pdf", PdfDocuments.besideByRows(6)),
                kept("PDF with the parts beside each other", "pdf", PdfDocuments.partsBeside()),
                kept("PDF with a column of amounts", "pdf", PdfDocuments.amountsLeft()),
                kept("PDF on two numbered pages", "pdf", PdfDocuments.pages()),
                kept("a page with a recipe among other data", "html", TextDocuments.jsonLd("\"Recipe\"", true)),
                kept("a page with a list of data", "html", TextDocuments.jsonLd("[\"Recipe\",\"NewsArticle\"]", false)),
                kept("a page with marked text", "html", TextDocuments.microdata()),
                kept("a page with nothing for machines", "html", TextDocuments.page()));
    }

    private static Named<Kept> kept(String name, String extension, String text) {
        return kept(name, extension, text.getBytes(StandardCharsets.UTF_8));
    }

    private static Named<Kept> kept(String name, String extension, byte[] bytes) {
        return Named.of(name, new Kept(extension, bytes));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void the_same_recipe_reads_the_same_as(Kept kept) throws IOException {
        Path file = Files.write(folder.resolve("slice." + kept.extension()), kept.bytes());
        Recipe recipe = RecipeReader.read(file, file.getFileName().toString());
        assertThat(recipe.title().replace("&", "and")).isEqualTo(OatSlice.TITLE);
        assertThat(recipe.components()).extracting(Component::name).containsExactly("base", "icing");
        assertThat(recipe.components())
                .extracting(
                        part -> part.lines().stream().map(IngredientLine::text).toList())
                .isEqualTo(List.of(OatSlice.BASE, OatSlice.ICING));
        assertThat(recipe.steps()).extracting(Step::text).isEqualTo(OatSlice.STEPS);
        assertThat(recipe.steps()).extracting(step -> step.uses().size()).isEqualTo(List.of(0, 4, 2));
        assertThat(recipe.settings()).extracting(Setting::what).containsExactly("slices");
        assertThat(recipe.notes()).isEmpty();
    }

    @Test
    void amounts_behind_the_name_are_read_before_it() throws IOException {
        Recipe recipe = read("buns.md", TextDocuments.nameFirst());
        assertThat(recipe.lines())
                .extracting(IngredientLine::text)
                .containsExactly("200 g/1½ cups plain flour", "a pinch salt");
        assertThat(recipe.notes()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ............................"})
    void names_and_amounts_at_the_two_edges_of_a_page_are_rows(String dots) throws IOException {
        Path file = Files.write(folder.resolve("buns.pdf"), PdfDocuments.amountsRight(dots));
        Recipe recipe = RecipeReader.read(file, "buns.pdf");
        assertThat(recipe.lines())
                .extracting(line -> QuantityWriter.text(line.quantity().orElseThrow()) + " " + line.ingredient())
                .containsExactly("500 g plain flour", "80 g butter", "1 tsp fine salt", "2 eggs");
        assertThat(recipe.steps()).extracting(step -> step.uses().size()).containsExactly(4, 0);
        assertThat(recipe.notes()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"md", "html"})
    void each_row_of_a_table_keeps_its_own_line_number(String kind) throws IOException {
        Recipe recipe = read("odd." + kind, TextDocuments.tableWithOddRow(kind.equals("html")));
        assertThat(recipe.notes())
                .anySatisfy(note ->
                        assertThat(note.toString()).contains("0 g sugar").contains("odd." + kind + ":9"));
    }

    @Test
    void a_mail_without_headings_loses_nothing_and_takes_in_no_greeting() throws IOException {
        Recipe recipe = read("mail.txt", TextDocuments.bareMail());
        assertThat(recipe.title()).isEqualTo("Lemon drizzle cake");
        assertThat(recipe.lines())
                .extracting(IngredientLine::text)
                .containsExactly(
                        "225g unsalted butter, softened - take it out of the fridge the night before",
                        "225g caster sugar",
                        "4 eggs");
        assertThat(recipe.steps())
                .extracting(Step::text)
                .containsExactly(
                        "Heat oven to 180C/fan 160C/gas 4. Beat together the butter and caster sugar until pale and creamy,"
                                + " then add the eggs one at a time.",
                        "Bake for 45-50 mins.");
    }

    private Recipe read(String name, String text) throws IOException {
        return RecipeReader.read(Files.writeString(folder.resolve(name), text), name);
    }
}
