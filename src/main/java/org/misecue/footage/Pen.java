package org.misecue.footage;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.PrimitiveIterator;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Writes with the outlines of the font that comes with PDFBox, so that text is the same whatever the machine's fonts. */
final class Pen implements AutoCloseable {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final TrueTypeFont font;

    Pen() {
        try (InputStream file = Objects.requireNonNull(PDDocument.class.getResourceAsStream(FONT), FONT)) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(file));
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + FONT, e);
        }
    }

    /**
     * Writes a line; what has no room is left away.
     *
     * @param size of an em, in pixels
     */
    void write(Graphics2D on, String text, double x, double baseline, double size, double room) {
        try {
            double scale = size / font.getUnitsPerEm();
            double at = x;
            for (PrimitiveIterator.OfInt signs = text.codePoints().iterator(); signs.hasNext(); ) {
                int glyph = font.getUnicodeCmapLookup().getGlyphId(signs.nextInt());
                double next = at + font.getAdvanceWidth(glyph) * scale;
                if (next > x + room) {
                    return;
                }
                on.fill(outline(glyph, new AffineTransform(scale, 0, 0, -scale, at, baseline)));
                at = next;
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + FONT, e);
        }
    }

    private Shape outline(int glyph, AffineTransform to) throws IOException {
        return font.getGlyph().getGlyph(glyph).getPath().createTransformedShape(to);
    }

    @Override
    public void close() {
        try {
            font.close();
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + FONT, e);
        }
    }
}
