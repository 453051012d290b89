package org.misecue.shown;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.io.InputStream;
import java.util.Random;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.misecue.footage.Grey;

/** Draws pictures for tests. */
final class Pictures {

    private Pictures() {}

    static Grey drawn(int width, int height, Consumer<Graphics2D> drawing) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        drawing.accept(pen);
        pen.dispose();
        return new Grey(width, height, ((DataBufferByte) image.getRaster().getDataBuffer()).getData());
    }

    /** Things that lie on a table, moved aside. */
    static void things(Graphics2D pen, int width, int height, int aside) {
        Random random = new Random(3);
        pen.setColor(new Color(120, 120, 120));
        pen.fillRect(0, 0, width, height);
        for (int i = 0; i < 40; i++) {
            int grey = 60 + random.nextInt(120);
            pen.setColor(new Color(grey, grey, grey));
            int size = 10 + random.nextInt(50);
            pen.fillOval(
                    Math.floorMod(random.nextInt(width) + aside, width + 60) - 60, random.nextInt(height), size, size);
        }
    }

    static void text(Graphics2D pen, String text, int x, int y, float size) {
        pen.setColor(Color.WHITE);
        pen.setFont(font().deriveFont(size));
        pen.drawString(text, x, y);
    }

    /** The font that PDFBox brings, so that the picture does not hang on the fonts of a machine. */
    static Font font() {
        try (InputStream in =
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the font in PDFBox cannot be read", e);
        }
    }
}
