package org.misecue.recipe.manuscript;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.misecue.recipe.ReadingParts;

/** Opens what is in memory. */
public final class Opening {

    private Opening() {}

    public static Line item(String text) {
        return Line.item(1, text);
    }

    public static Manuscript markdown(String text) {
        return new MarkdownManuscript()
                .read(new Document("r.md", Kinds.MARKDOWN, text.getBytes(StandardCharsets.UTF_8)));
    }

    /** What is left to do when a library has read the document: Tika, PDFBox, or the parser of web pages. */
    public static Supplier<Manuscript> behindLibrary(String kind, byte[] bytes) throws Exception {
        switch (kind) {
            case "html" -> {
                org.jsoup.nodes.Document page = WebPageManuscript.parsed(new String(bytes, StandardCharsets.UTF_8));
                return () -> WebPageManuscript.read(page);
            }
            case "pdf" -> {
                List<List<PdfWords.Word>> pages = pages(new Document("r.pdf", "application/pdf", bytes));
                return () -> new Manuscript("", PdfManuscript.lines(PdfText.of(pages)));
            }
            default -> {
                String xhtml = ReadingParts.tika(bytes);
                return () -> OfficeManuscript.read(Extraction.body(xhtml));
            }
        }
    }

    private static List<List<PdfWords.Word>> pages(Document document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document.bytes())) {
            return PdfWords.in(document, pdf);
        }
    }
}
