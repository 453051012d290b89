package org.misecue.recipe.manuscript;

import java.util.List;
import org.jsoup.nodes.Element;

/** A PDF with text in it, read as plain text: its lines are those of the page, not of a file. */
final class PdfManuscript implements ManuscriptReader {

    @Override
    public boolean takes(String type) {
        return type.equals("application/pdf");
    }

    @Override
    public Manuscript read(Document document) {
        List<Line> lines = lines(Extraction.body(document));
        if (lines.isEmpty()) {
            throw document.refuse(
                    "there is no text in this PDF, it may be a scan; have its text recognised first, or paste the recipe into a text file.");
        }
        return new Manuscript("", lines);
    }

    static List<Line> lines(Element body) {
        StringBuilder text = new StringBuilder();
        for (Element paragraph : body.select("p")) {
            text.append(paragraph.wholeText()).append("\n\n");
        }
        return PlainTextManuscript.lines(text.toString()).stream()
                .map(line -> new Line(0, line.kind(), line.level(), line.text(), line.gap()))
                .toList();
    }
}
