package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;
import org.misecue.quantity.QuantityWriter;

/** The same recipe in every kind of document is the same recipe; what is no recipe is told so. */
class DocumentKindsTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"docx", "odt", "pdf", "rtf", "html"})
    void the_same_recipe_is_read_from(String kind) throws IOException {
        Path file = folder.resolve("rolls." + kind);
        switch (kind) {
            case "docx" -> Documents.docx(file);
            case "odt" -> Documents.odt(file);
            case "pdf" -> Documents.pdf(file);
            case "rtf" -> Documents.rtf(file);
            default -> Files.writeString(file, Documents.html());
        }
        assertRolls(RecipeReader.read(file, file.getFileName().toString()));
    }

    @Test
    void a_document_is_told_by_its_content_not_by_its_name() throws IOException {
        assertRolls(RecipeReader.read(Documents.docx(folder.resolve("really-word.md")), "really-word.md"));
        assertRolls(RecipeReader.read(Documents.pdf(folder.resolve("really-pdf.txt")), "really-pdf.txt"));
        assertRolls(RecipeReader.read(Files.writeString(folder.resolve("page.txt"), Documents.html()), "page.txt"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "windows-1252", "UTF-8"})
    void text_is_read_in_any_usual_encoding(String charset) throws IOException {
        Path file = folder.resolve("r.txt");
        Files.write(file, "Crème buns\n\nIngredients\n½ tsp salt\n".getBytes(Charset.forName(charset)));
        Recipe recipe = RecipeReader.read(file, "r.txt");
        assertThat(recipe.title()).isEqualTo("Crème buns");
        assertThat(recipe.lines().get(0).text()).isEqualTo("½ tsp salt");
    }

    private static void assertRolls(Recipe recipe) {
        assertThat(recipe.title()).isEqualTo("Seeded Rye Rolls");
        assertThat(recipe.settings()).extracting(Setting::what).containsExactly("rolls", "square tin");
        assertThat(recipe.components()).extracting(Component::name).containsExactly("dough", "topping");
        assertThat(recipe.lines())
                .extracting(line -> QuantityWriter.text(line.quantity().orElseThrow()) + " " + line.ingredient())
                .containsExactly(
                        "300 g rye flour",
                        "7 g fast-action dried yeast",
                        "1½ tsp fine salt",
                        "220 ml water",
                        "1 egg",
                        "2–3 tbsp pumpkin seeds");
        assertThat(recipe.steps()).hasSize(3);
        assertThat(recipe.steps()).extracting(step -> step.uses().size()).isEqualTo(List.of(4, 0, 2));
        assertThat(recipe.steps())
                .extracting(Step::text)
                .containsExactly(Documents.ROLLS[13][1], Documents.ROLLS[14][1], Documents.ROLLS[15][1]);
        assertThat(recipe.notes()).isEmpty();
    }

    @Test
    void a_locked_pdf_asks_for_a_copy_without_password() throws IOException {
        refused(Documents.lockedPdf(folder.resolve("r.pdf")), "locked with a password; save a copy without one");
    }

    @Test
    void a_scan_asks_for_text() throws IOException {
        refused(Documents.scannedPdf(folder.resolve("r.pdf")), "no text in this PDF, it may be a scan");
    }

    @Test
    void a_mail_without_words_asks_for_its_attachment() throws IOException {
        refused(
                Files.write(folder.resolve("r.eml"), MailDocuments.onlyAttachment()),
                "there is no text in this mail; save its attachment as a file");
    }

    @Test
    void a_mail_in_a_mail_programs_own_format_asks_for_text() throws IOException {
        byte[] message = java.util.Arrays.copyOf(
                new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1},
                4096);
        refused(
                Files.write(folder.resolve("r.msg"), message),
                "this is a message in a mail program's own format; open it there and save it as text or as .eml.");
    }

    @Test
    void an_empty_file_says_so() throws IOException {
        refused(Files.createFile(folder.resolve("r.md")), "the file is empty");
    }

    @Test
    void a_missing_file_says_so() {
        refused(folder.resolve("r.md"), "there is no such file");
    }

    @Test
    void bytes_named_as_text_are_no_text() throws IOException {
        byte[] bytes = new byte[4096];
        new java.util.Random(7).nextBytes(bytes);
        refused(Files.write(folder.resolve("r.md"), bytes), "this is no text but a file of an unknown kind");
        refused(
                Files.write(folder.resolve("p.txt"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0}),
                "a picture");
    }

    @Test
    void damaged_documents_say_so() throws IOException {
        byte[] half = Files.readAllBytes(Documents.docx(folder.resolve("whole.docx")));
        refused(Files.write(folder.resolve("r.docx"), java.util.Arrays.copyOf(half, half.length / 2)), "save it again");
        refused(Files.writeString(folder.resolve("r.pdf"), "%PDF-1.4\n1 0 obj\n<<>>\nendobj\n"), "save it again");
    }

    @Test
    void words_without_ingredients_are_no_recipe() throws IOException {
        refused(
                Files.writeString(folder.resolve("r.md"), "# A poem\n\nRoses are red.\n"),
                "no ingredients were found; put them under a heading \"Ingredients\"");
    }

    @Test
    void fifty_megabytes_of_text_are_too_much() throws IOException {
        Path file = folder.resolve("r.txt");
        try (var channel = java.nio.channels.FileChannel.open(
                file, java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.WRITE)) {
            channel.position(50L << 20);
            channel.write(StandardCharsets.US_ASCII.encode("x"));
        }
        refused(file, "50 MB is too much for a recipe, of which 20 MB are read");
    }

    @Test
    void a_zip_bomb_ends_quickly() throws IOException {
        Path file = Documents.bombDocx(folder.resolve("r.docx"), 300);
        long start = System.nanoTime();
        refused(file, "");
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(10));
    }

    @Test
    void entities_of_the_machine_are_not_fetched() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "Ingredients 100 g secret");
        Path file = Documents.prying(folder.resolve("r.docx"), secret);
        assertThatThrownBy(() -> RecipeReader.read(file, "r.docx"))
                .isInstanceOf(BadInput.class)
                .hasMessageNotContaining("secret");
    }

    private static void refused(Path file, String words) {
        String name = file.getFileName().toString();
        assertThatThrownBy(() -> RecipeReader.read(file, name))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(name + ": ")
                .hasMessageContaining(words);
    }
}
