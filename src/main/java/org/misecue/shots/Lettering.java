package org.misecue.shots;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** How many lines words take on a cue card, reckoned in the bold letters that it is printed in. */
final class Lettering {

    private static final float PER_EM = 1000f;

    /** For a sign that the font lacks and another one stands in for. */
    private static final float WIDEST = 1000f;

    private static final PDType1Font BOLD = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);

    private Lettering() {}

    /**
     * @param size of the letters and
     * @param width of the line, both in points
     */
    static int lines(String words, int size, float width) {
        int lines = 1;
        float used = 0;
        for (String word : words.split(" ")) {
            float length = width(word, size);
            float joined = used == 0 ? length : used + width(" ", size) + length;
            if (joined <= width) {
                used = joined;
            } else {
                lines += used == 0 ? 0 : 1;
                // a word longer than a line goes on in the next
                lines += (int) (length / width);
                used = length % width;
            }
        }
        return lines;
    }

    private static float width(String word, int size) {
        return (float) word.codePoints().mapToDouble(Lettering::width).sum() * size / PER_EM;
    }

    private static float width(int sign) {
        try {
            return BOLD.getStringWidth(Character.toString(sign));
        } catch (IllegalArgumentException notInThisFont) {
            return WIDEST;
        } catch (IOException e) {
            throw new UncheckedIOException("a font of the program could not be read", e);
        }
    }
}
