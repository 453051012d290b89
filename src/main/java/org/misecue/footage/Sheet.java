package org.misecue.footage;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.Arrays;

/** Small pictures in rows under a heading, each with a line of text below. */
final class Sheet {

    private static final int EDGE = 16;
    private static final int GAP = 8;
    private static final int HEAD = 34;
    private static final int FOOT = 22;
    private static final Color INK = new Color(0x22, 0x22, 0x22);

    private final Pen pen;
    private final Rgb paper;
    private final BufferedImage canvas;
    private final int columns;
    private final int cellWidth;
    private final int cellHeight;
    private int placed;

    /**
     * An empty sheet with room for so many pictures.
     *
     * @param like the first of them; the others go into a cell of its size
     */
    Sheet(Pen pen, String heading, int pictures, int columns, Rgb like) {
        this.pen = pen;
        this.columns = columns;
        this.cellWidth = like.width();
        this.cellHeight = like.height();
        int rows = (pictures + columns - 1) / columns;
        int width = 2 * EDGE + columns * (cellWidth + GAP) - GAP;
        int height = EDGE + HEAD + rows * (cellHeight + FOOT + GAP) - GAP + EDGE;
        byte[] pixels = new byte[3 * width * height];
        Arrays.fill(pixels, (byte) 0xff);
        this.paper = new Rgb(width, height, pixels);
        this.canvas = canvas(paper);
        write(heading, EDGE, EDGE + 16, 17, width - 2 * EDGE);
    }

    /** Draws straight into the paper's pixels. */
    private static BufferedImage canvas(Rgb paper) {
        DataBufferByte pixels = new DataBufferByte(paper.pixels(), paper.pixels().length);
        WritableRaster raster = Raster.createInterleavedRaster(
                pixels, paper.width(), paper.height(), 3 * paper.width(), 3, new int[] {0, 1, 2}, null);
        ComponentColorModel colours = new ComponentColorModel(
                ColorSpace.getInstance(ColorSpace.CS_sRGB), false, false, Transparency.OPAQUE, DataBuffer.TYPE_BYTE);
        return new BufferedImage(colours, raster, false, null);
    }

    /** Puts the next picture in its place, in the middle of its cell. */
    void place(Rgb picture, String below) {
        int left = EDGE + placed % columns * (cellWidth + GAP);
        int top = EDGE + HEAD + placed / columns * (cellHeight + FOOT + GAP);
        int width = Math.min(picture.width(), cellWidth);
        int height = Math.min(picture.height(), cellHeight);
        int x = left + (cellWidth - width) / 2;
        for (int row = 0; row < height; row++) {
            int y = top + (cellHeight - height) / 2 + row;
            System.arraycopy(
                    picture.pixels(),
                    3 * row * picture.width(),
                    paper.pixels(),
                    3 * (y * paper.width() + x),
                    3 * width);
        }
        write(below, left, top + cellHeight + 16, 14, cellWidth);
        placed++;
    }

    private void write(String text, int x, int baseline, int size, int room) {
        Graphics2D graphics = canvas.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(INK);
        pen.write(graphics, text, x, baseline, size, room);
        graphics.dispose();
    }

    byte[] png() {
        return Png.encode(paper);
    }
}
