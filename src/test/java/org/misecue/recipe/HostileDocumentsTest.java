package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a file does to its reader: one sentence, in bounded time and memory. */
class HostileDocumentsTest {

    private static final String TOO_LONG =
            "there is far more text in it than a recipe has; keep only the recipe in this file.";
    private static final String UNFOLDS =
            "the document unfolds to far more than a recipe has; keep only the recipe in this file.";
    private static final String TOO_DEEP =
            "lists, quotes or marks lie too deep within each other; paste the recipe into a plain text file.";
    private static final String DAMAGED =
            "the document is damaged or not what its name says; save it again, or paste the recipe into a text file.";
    private static final String NO_INGREDIENTS =
            "no ingredients were found; put them under a heading \"Ingredients\", one to a line, amount first.";
    private static final String NO_TEXT =
            "there is no text in this PDF, it may be a scan; have its text recognised first, or paste the recipe into a text file.";
    private static final String NOTHING =
            "there is no text in this file; give the recipe as text, Markdown, Word, ODF, RTF, HTML or PDF.";

    @TempDir
    Path folder;

    private final Map<Path, String> sentences = new LinkedHashMap<>();

    @Test
    void each_gets_one_sentence_in_seconds_and_256_megabytes() throws IOException, InterruptedException {
        text();
        nests();
        archives();
        pdfs();
        mails();
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-Xshare:auto",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                ReadsAll.class.getName()));
        sentences.keySet().forEach(file -> command.add(file.toString()));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> told = lines(process.getInputStream());
        assertThat(process.waitFor()).isZero();
        assertThat(told.stream().map(line -> line.replaceFirst("^\\d+ ", "")))
                .containsExactlyElementsOf(sentences.entrySet().stream()
                        .map(each -> each.getKey().getFileName() + ": " + each.getValue())
                        .toList());
        assertThat(told).allSatisfy(line -> assertThat(Long.parseLong(line.substring(0, line.indexOf(' '))))
                .as(line)
                .isLessThan(30_000));
    }

    private void text() throws IOException {
        String tooMuch = "100 MB is too much for a recipe, of which 20 MB are read; keep only the recipe in this file.";
        expect(
                HostileDocuments.megabytes(folder.resolve("long.txt"), 101, "200 g flour\n"),
                "101" + tooMuch.substring(3));
        expect(HostileDocuments.hole(folder.resolve("long.md"), 100 << 20), tooMuch);
        expect(
                HostileDocuments.megabytes(folder.resolve("page.html"), 30, "<p>200 g flour</p>\n"),
                "30" + tooMuch.substring(3));
        expect(HostileDocuments.megabytes(folder.resolve("broad.html"), 18, "<p>200 g flour</p>\n"), TOO_LONG);
        expect(HostileDocuments.megabytes(folder.resolve("lines.txt"), 15, "a\n"), TOO_LONG);
        expect(HostileDocuments.megabytes(folder.resolve("onepiece.md"), 1, "a "), TOO_LONG);
        // Found by random changes to a good recipe: blanks kept the pattern for headings busy for minutes.
        expect(Files.writeString(folder.resolve("blanks.md"), "a" + "\t".repeat(9000) + "b\n"), NO_INGREDIENTS);
        expect(Files.createFile(folder.resolve("empty.docx")), "the file is empty; write or paste the recipe into it.");
        expect(Files.createDirectory(folder.resolve("sub.md")), "this is a folder; name the recipe's file in it.");
        expect(Files.writeString(folder.resolve("blank.txt"), " \n\n\t\n"), NOTHING);
        expect(Files.write(folder.resolve("rubbish.docx"), rubbish()), DAMAGED);
        expect(
                Files.writeString(
                        folder.resolve("news.html"),
                        "<html><h1>News</h1><p>It rained.</p><ul><li>Wind</li></ul></html>"),
                NO_INGREDIENTS);
    }

    private static byte[] rubbish() {
        byte[] bytes = new byte[65536];
        new java.util.Random(5).nextBytes(bytes);
        return bytes;
    }

    private void nests() throws IOException {
        int deep = 100_000;
        int less = 10_000;
        expect(
                Files.writeString(folder.resolve("deep.html"), "<div>".repeat(less) + "x" + "</div>".repeat(less)),
                NOTHING);
        expect(Files.writeString(folder.resolve("lists.html"), "<ul><li>".repeat(less) + "x"), NOTHING);
        expect(Files.writeString(folder.resolve("tables.html"), "<table><tr><td>".repeat(deep) + "x"), TOO_LONG);
        expect(
                Files.writeString(
                        folder.resolve("json.html"),
                        "<html><script type=\"application/ld+json\">" + "[".repeat(deep) + "]".repeat(deep)
                                + "</script>x</html>"),
                NO_INGREDIENTS);
        expect(
                Files.writeString(
                        folder.resolve("steps.html"),
                        "<html><script type=\"application/ld+json\">{\"@type\":\"Recipe\",\"recipeIngredient\":[\"1 kg\"],\"recipeInstructions\":"
                                + "{\"itemListElement\":".repeat(deep) + "1" + "}".repeat(deep) + "}</script>x</html>"),
                NO_INGREDIENTS);
        expect(Files.writeString(folder.resolve("quotes.md"), ">".repeat(deep) + " x"), TOO_LONG);
        expect(Files.writeString(folder.resolve("bullets.md"), "- ".repeat(deep) + " x"), TOO_LONG);
        expect(Files.writeString(folder.resolve("stars.md"), "# a\n" + "*a _b ".repeat(deep / 10)), TOO_LONG);
        expect(
                Files.writeString(
                        folder.resolve("groups.rtf"), "{\\rtf1 " + "{".repeat(deep) + "x" + "}".repeat(deep) + "}"),
                NOTHING);
    }

    private void archives() throws IOException {
        expect(Documents.bombDocx(folder.resolve("bomb.docx"), 300), UNFOLDS);
        expect(HostileDocuments.bombOdt(folder.resolve("bomb.odt")), UNFOLDS);
        Path secret = Files.writeString(folder.resolve("secret.txt"), "Ingredients\n100 g secret");
        expect(Documents.prying(folder.resolve("prying.docx"), secret), DAMAGED);
        expect(
                Files.write(
                        folder.resolve("deep.docx"),
                        FuzzSeeds.docx(
                                "<w:document xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\"><w:body>"
                                        + "<w:tbl><w:tr><w:tc>".repeat(50_000))),
                DAMAGED);
        expect(
                Files.write(
                        folder.resolve("deep.odt"),
                        FuzzSeeds.odt("<a>".repeat(100_000) + "x" + "</a>".repeat(100_000))),
                NOTHING);
    }

    private void pdfs() throws IOException {
        expect(
                Documents.lockedPdf(folder.resolve("locked.pdf")),
                "the document is locked with a password; save a copy without one.");
        expect(HostileDocuments.scan(folder.resolve("scan.pdf")), NO_TEXT);
        expect(HostileDocuments.pages(folder.resolve("pages.pdf"), 5000), NO_TEXT);
        expect(HostileDocuments.loop(folder.resolve("loop.pdf")), NO_TEXT);
    }

    private void mails() throws IOException {
        String head = "MIME-Version: 1.0\r\n";
        String parts = "Content-Type: multipart/mixed; boundary=b\r\n\r\n";
        expect(
                Files.writeString(
                        folder.resolve("many.eml"),
                        head + parts + "--b\r\nContent-Type: text/plain\r\n\r\n \r\n".repeat(200_000)),
                TOO_LONG);
        expect(
                Files.writeString(
                        folder.resolve("deep.eml"), head + "Content-Type: message/rfc822\r\n\r\n".repeat(20_000) + "x"),
                TOO_DEEP);
        expect(
                Files.writeString(
                        folder.resolve("head.eml"), "Subject: " + "a".repeat(3_000_000) + "\r\n" + head + "\r\nx"),
                DAMAGED);
        expect(
                Files.writeString(
                        folder.resolve("long.eml"),
                        head + "Content-Type: text/plain; charset=iso-8859-1\r\n\r\n"
                                + "200 g flour\r\n".repeat(900_000)),
                TOO_LONG);
    }

    private void expect(Path file, String sentence) {
        sentences.put(file, sentence);
    }

    private static List<String> lines(InputStream in) throws IOException {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
}
