package org.misecue.prep;

import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * A plain grid of labels on a sheet of paper, with a margin that printers leave white anyway.
 *
 * @param columns of labels across the sheet
 * @param rows of labels down the sheet
 */
public record LabelSheet(Paper paper, int columns, int rows) {

    /** Common practice, no source: home printers leave 3 to 7 mm white. */
    private static final int MARGIN_MM = 8;

    private static final int LEAST_WIDTH_MM = 40;
    private static final int LEAST_HEIGHT_MM = 24;

    public static final LabelSheet USUAL = new LabelSheet(Paper.A4, 3, 7);

    /** The sheets of paper, with their sizes from memory (ISO 216; 8½ × 11 inches). */
    public enum Paper {
        A4("210mm 297mm", 210, 297),
        LETTER("8.5in 11in", 215.9, 279.4);

        private final String css;
        private final double width;
        private final double height;

        Paper(String css, double width, double height) {
            this.css = css;
            this.width = width;
            this.height = height;
        }

        public String css() {
            return css;
        }

        public double width() {
            return width;
        }

        public double height() {
            return height;
        }
    }

    /**
     * @param paper "A4" or "Letter"
     * @param grid columns and rows, such as "3x8"
     * @throws BadInput if there is no such paper or the labels would be too small to read
     */
    public static LabelSheet of(String paper, String grid) {
        Paper sheet =
                switch (paper.toLowerCase(java.util.Locale.ROOT)) {
                    case "a4" -> Paper.A4;
                    case "letter" -> Paper.LETTER;
                    default -> throw new BadInput(Place.of("--paper"), "paper is A4 or Letter, not “" + paper + "”.");
                };
        if (!grid.matches("[1-9]\\d?\\s*[x×X]\\s*[1-9]\\d?")) {
            throw new BadInput(
                    Place.of("--grid"), "expected columns and rows of labels such as 3x8, not “" + grid + "”.");
        }
        String[] sides = grid.split("\\s*[x×X]\\s*");
        LabelSheet labels = new LabelSheet(sheet, Integer.parseInt(sides[0]), Integer.parseInt(sides[1]));
        if (labels.width() < LEAST_WIDTH_MM || labels.height() < LEAST_HEIGHT_MM) {
            throw new BadInput(
                    Place.of("--grid"),
                    "%s labels would be %.0f × %.0f mm on %s; take fewer, so that each has at least %d × %d mm."
                            .formatted(grid, labels.width(), labels.height(), paper, LEAST_WIDTH_MM, LEAST_HEIGHT_MM));
        }
        return labels;
    }

    /** Of a label in millimetres. */
    public double width() {
        return (paper.width() - 2 * MARGIN_MM) / columns;
    }

    /** Of a label in millimetres. */
    public double height() {
        return (paper.height() - 2 * MARGIN_MM) / rows;
    }

    public int perPage() {
        return columns * rows;
    }

    /** From the left edge of the paper in millimetres. */
    public double left(int place) {
        return MARGIN_MM + (place % columns) * width();
    }

    /** From the upper edge of the paper in millimetres. */
    public double top(int place) {
        return MARGIN_MM + (place / columns) * height();
    }
}
