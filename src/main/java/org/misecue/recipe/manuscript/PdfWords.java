package org.misecue.recipe.manuscript;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The words of a PDF with their places, page by page, in whatever order the program drew them. */
final class PdfWords extends PDFTextStripper {

    /** Dots that lead the eye from a name to its amount. */
    private static final Pattern LEADER = Pattern.compile("(?:\\.\\h?){3,}|…{2,}|_{3,}");

    /**
     * A word on a page; places are in points, from the left and from the top.
     *
     * @param base where the letters stand
     * @param size of the letters
     */
    record Word(String text, double left, double right, double base, double size) {}

    private final Document document;
    private final List<List<Word>> pages = new ArrayList<>();
    private List<Word> page = new ArrayList<>();
    private int letters;

    private PdfWords(Document document) {
        this.document = document;
        setSortByPosition(true);
        setShouldSeparateByBeads(false);
        setSuppressDuplicateOverlappingText(true);
    }

    static List<List<Word>> in(Document document, PDDocument pdf) throws IOException {
        PdfWords words = new PdfWords(document);
        words.writeText(pdf, Writer.nullWriter());
        return words.pages;
    }

    @Override
    protected void endPage(PDPage ended) {
        pages.add(page);
        page = new ArrayList<>();
    }

    @Override
    protected void writeString(String text, List<TextPosition> places) {
        letters += text.length();
        if (letters > Document.MOST_CHARACTERS) {
            throw document.tooLong();
        }
        int from = 0;
        for (Matcher leader = LEADER.matcher(text); leader.find(); from = leader.end()) {
            add(text, from, leader.start(), places);
        }
        add(text, from, text.length(), places);
    }

    private void add(String text, int from, int to, List<TextPosition> places) {
        String word = text.substring(from, to).strip();
        if (!word.isEmpty() && !places.isEmpty()) {
            // Letters drawn as one sign can make the text longer than its places.
            TextPosition first = places.get(Math.min(from, places.size() - 1));
            TextPosition last = places.get(Math.min(to, places.size()) - 1);
            page.add(new Word(
                    word,
                    first.getXDirAdj(),
                    last.getXDirAdj() + last.getWidthDirAdj(),
                    first.getYDirAdj(),
                    Math.max(first.getFontSizeInPt(), 1)));
        }
    }
}
