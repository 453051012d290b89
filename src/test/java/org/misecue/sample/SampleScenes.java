package org.misecue.sample;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The sample film's pictures: the table from above, with step card, clock and lower third. */
final class SampleScenes {

    private static final List<String> STEPS = List.of(
            "Roasted plum and hazelnut cake",
            "Roast the plums",
            "Line the tin",
            "Whisk the dry mix",
            "Cream butter and sugar",
            "Add eggs and vanilla",
            "Fold",
            "Fill and bake",
            "Cool",
            "Tahini cream");

    private static final Color INK = new Color(0x3b2a2f);
    private static final Color CARD = new Color(0xfffaf2);
    private static final Color PLUM = new Color(0x7a2748);

    private final SampleTimeline timeline;
    private final Font font;

    SampleScenes(SampleTimeline timeline) {
        this.timeline = timeline;
        this.font = font();
    }

    BufferedImage at(int frame) {
        int second = frame / SampleFilm.FRAMES_PER_SECOND;
        BufferedImage image = new BufferedImage(SampleFilm.WIDTH, SampleFilm.HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        int step = timeline.stepAt(second);
        new SampleTable(pen).draw(step, timeline.sinceStep(second), frame);
        stepCard(pen, step);
        clock(pen, second);
        timeline.captionAt(second).ifPresent(text -> lowerThird(pen, text));
        pen.dispose();
        return image;
    }

    private void stepCard(Graphics2D pen, int step) {
        pen.setFont(font.deriveFont(20f));
        int left = step == 0 ? 18 : 54;
        int width = left + pen.getFontMetrics().stringWidth(STEPS.get(step)) + 18;
        pen.setColor(CARD);
        pen.fillRoundRect(16, 16, width, 38, 12, 12);
        pen.setColor(INK);
        pen.drawString(STEPS.get(step), 16 + left, 42);
        if (step > 0) {
            pen.setColor(PLUM);
            pen.fillOval(22, 20, 30, 30);
            pen.setColor(CARD);
            pen.drawString(Integer.toString(step), 31, 42);
        }
    }

    private void clock(Graphics2D pen, int second) {
        pen.setFont(font.deriveFont(18f));
        pen.setColor(INK);
        pen.fillRoundRect(562, 16, 62, 30, 10, 10);
        pen.setColor(CARD);
        pen.drawString("%d:%02d".formatted(second / 60, second % 60), 574, 37);
    }

    private void lowerThird(Graphics2D pen, String text) {
        pen.setFont(font.deriveFont(30f));
        int width = pen.getFontMetrics().stringWidth(text) + 48;
        pen.setColor(CARD);
        pen.fillRect(40, 286, width, 48);
        pen.setColor(PLUM);
        pen.fillRect(40, 286, 8, 48);
        pen.setColor(INK);
        pen.setStroke(new BasicStroke(1));
        pen.drawString(text, 66, 321);
    }

    /** The font that PDFBox brings, so that the picture does not hang on the fonts of a machine. */
    private static Font font() {
        try (InputStream in =
                PDDocument.class.getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the font in PDFBox cannot be read", e);
        }
    }
}
