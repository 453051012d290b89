package org.misecue.recipe.manuscript;

import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;

/** Documents of word processors: Word, OpenDocument, RTF. */
final class OfficeManuscript implements ManuscriptReader {

    /** Where a footnote is pointed to; its words stand in a paragraph of their own. */
    private static final Pattern FOOTNOTE = Pattern.compile("\\[(?:foot|end)noteRef:\\d+]");

    @Override
    public boolean takes(String type) {
        return type.contains("wordprocessingml")
                || type.equals("application/msword")
                || type.contains("opendocument.text")
                || type.endsWith("/rtf")
                || type.equals("application/x-tika-ooxml")
                || type.equals("application/x-tika-ooxml-protected")
                || type.equals("application/x-tika-msoffice");
    }

    @Override
    public Manuscript read(Document document) {
        return read(Extraction.body(WithoutChanges.of(document)));
    }

    static Manuscript read(Element body) {
        for (Element paragraph : body.select("p")) {
            for (TextNode text : List.copyOf(paragraph.textNodes())) {
                text.text(FOOTNOTE.matcher(text.getWholeText()).replaceAll(""));
                breakLines(text);
            }
        }
        return WebPageManuscript.shown(body);
    }

    /** A line break within a paragraph comes as one in the text, and a text box as lines within brackets of their own. */
    private static void breakLines(TextNode text) {
        if (!text.getWholeText().strip().contains("\n")) {
            return;
        }
        for (String line : text.getWholeText().split("\n")) {
            if (!line.isBlank() && !line.strip().matches("[()]")) {
                text.before(new TextNode(line));
                text.before(new Element("br").addClass(ShownLines.SOFT));
            }
        }
        text.remove();
    }
}
