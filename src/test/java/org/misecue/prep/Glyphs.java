package org.misecue.prep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Every letter of a PDF with its place, so that a test can see what a printer would print where. */
record Glyphs(int pages, List<Glyph> all) {

    private static final double MM = 25.4 / 72;

    /** Millimetres from the upper left corner of the page; the size in points. */
    record Glyph(int page, String text, double left, double right, double top, double bottom, double points) {}

    static Glyphs of(byte[] pdf) {
        List<Glyph> found = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    for (TextPosition at : positions) {
                        if (!at.getUnicode().isBlank()) {
                            found.add(glyph(getCurrentPageNo() - 1, at));
                        }
                    }
                }
            };
            stripper.getText(document);
            return new Glyphs(document.getNumberOfPages(), found);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Glyph glyph(int page, TextPosition at) {
        double left = at.getXDirAdj() * MM;
        double bottom = at.getYDirAdj() * MM;
        double points = at.getFontSizeInPt();
        return new Glyph(
                page,
                at.getUnicode(),
                left,
                left + at.getWidthDirAdj() * MM,
                bottom - points * 0.75 * MM,
                bottom,
                points);
    }

    /** All letters without any blank. */
    String text() {
        return joined(all);
    }

    static String joined(List<Glyph> glyphs) {
        StringBuilder out = new StringBuilder();
        glyphs.forEach(glyph -> out.append(glyph.text()));
        return out.toString();
    }
}
