package org.misecue.recipe.manuscript;

import java.nio.charset.StandardCharsets;

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

    /** What is made of Tika's XHTML, or of a whole web page. */
    public static Manuscript behindTika(String kind, String text) {
        return switch (kind) {
            case "html" ->
                new WebPageManuscript()
                        .read(new Document("r.html", "text/html", text.getBytes(StandardCharsets.UTF_8)));
            case "pdf" ->
                new Manuscript("", PdfManuscript.lines(Extraction.body(text).wholeText()));
            default -> OfficeManuscript.read(Extraction.body(text));
        };
    }
}
