package org.misecue.shown;

import java.util.Arrays;
import java.util.List;
import org.misecue.footage.Grey;

/** Pictures made ready for reading: dark letters on a lighter ground, large enough. */
final class Tone {

    private Tone() {}

    /**
     * Several pictures of the same part in one. Light letters are as bright in all of them, so the darkest of each
     * point keeps them and takes brightness from what moves behind; the result is turned over. For dark letters it is
     * the other way round.
     */
    static Grey together(List<Grey> pictures, boolean light) {
        Grey first = pictures.get(0);
        byte[] out = new byte[first.pixels().length];
        for (int i = 0; i < out.length; i++) {
            int value = light ? 255 : 0;
            for (Grey picture : pictures) {
                int p = picture.pixels()[i] & 0xff;
                value = light ? Math.min(value, p) : Math.max(value, p);
            }
            out[i] = (byte) (light ? 255 - value : value);
        }
        return new Grey(first.width(), first.height(), out);
    }

    /** The middle value of each point; turned over for light letters. */
    static Grey middle(List<Grey> pictures, boolean light) {
        Grey first = pictures.get(0);
        byte[] out = new byte[first.pixels().length];
        int[] values = new int[pictures.size()];
        for (int i = 0; i < out.length; i++) {
            for (int k = 0; k < values.length; k++) {
                values[k] = pictures.get(k).pixels()[i] & 0xff;
            }
            Arrays.sort(values);
            int value = values[values.length / 2];
            out[i] = (byte) (light ? 255 - value : value);
        }
        return new Grey(first.width(), first.height(), out);
    }

    /** Letters black, the ground next to them white, and nothing lighter than white. */
    static Grey stretched(Grey picture, Exposure.Levels levels) {
        byte[] out = new byte[picture.pixels().length];
        int contrast = Math.max(1, levels.contrast());
        for (int i = 0; i < out.length; i++) {
            int value = ((picture.pixels()[i] & 0xff) - levels.ink()) * 255 / contrast;
            out[i] = (byte) Math.max(0, Math.min(255, value));
        }
        return new Grey(picture.width(), picture.height(), out);
    }

    static Grey cut(Grey picture, Box box) {
        byte[] out = new byte[box.width() * box.height()];
        for (int y = 0; y < box.height(); y++) {
            System.arraycopy(
                    picture.pixels(),
                    (box.top() + y) * picture.width() + box.left(),
                    out,
                    y * box.width(),
                    box.width());
        }
        return new Grey(box.width(), box.height(), out);
    }

    /** Without the columns from one to before another. */
    static Grey withoutColumns(Grey picture, int from, int to) {
        int width = picture.width() - (to - from);
        byte[] out = new byte[width * picture.height()];
        for (int y = 0; y < picture.height(); y++) {
            int row = y * picture.width();
            System.arraycopy(picture.pixels(), row, out, y * width, from);
            System.arraycopy(picture.pixels(), row + to, out, y * width + from, picture.width() - to);
        }
        return new Grey(width, picture.height(), out);
    }

    /** With a white border, without which recognisers lose what stands at the edge. */
    static Grey framed(Grey picture, int border) {
        int width = picture.width() + 2 * border;
        byte[] out = new byte[width * (picture.height() + 2 * border)];
        Arrays.fill(out, (byte) 255);
        for (int y = 0; y < picture.height(); y++) {
            System.arraycopy(
                    picture.pixels(), y * picture.width(), out, (y + border) * width + border, picture.width());
        }
        return new Grey(width, picture.height() + 2 * border, out);
    }

    /** Without the pieces that reach the edge of a picture in black and white: what lies around boxes and outlines. */
    static Grey withoutEdge(Grey picture) {
        byte[] out = picture.pixels().clone();
        for (Components.Piece piece : Components.of(picture)) {
            Box box = piece.box();
            if (box.left() == 0
                    || box.top() == 0
                    || box.right() == picture.width()
                    || box.bottom() == picture.height()) {
                for (int point : piece.points()) {
                    out[point] = (byte) 255;
                }
            }
        }
        return new Grey(picture.width(), picture.height(), out);
    }

    /** In another size: smoothly larger, or smaller by the mean of what falls together. */
    static Grey scaled(Grey picture, double factor) {
        int width = Math.max(1, (int) Math.round(picture.width() * factor));
        int height = Math.max(1, (int) Math.round(picture.height() * factor));
        float[] rows = new float[width * picture.height()];
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < width; x++) {
                int row = y * picture.width();
                rows[y * width + x] =
                        sample(i -> picture.pixels()[row + i] & 0xff, picture.width(), (x + 0.5) / factor, 1 / factor);
            }
        }
        byte[] out = new byte[width * height];
        for (int x = 0; x < width; x++) {
            int column = x;
            for (int y = 0; y < height; y++) {
                float value = sample(i -> rows[i * width + column], picture.height(), (y + 0.5) / factor, 1 / factor);
                out[y * width + x] = (byte) Math.max(0, Math.min(255, Math.round(value)));
            }
        }
        return new Grey(width, height, out);
    }

    private interface Values {
        float at(int i);
    }

    /** The value around a place; Catmull and Rom's cubic where it is made larger. */
    private static float sample(Values values, int length, double centre, double reach) {
        if (reach > 1) {
            int from = Math.max(0, (int) Math.round(centre - reach / 2));
            int to = Math.min(length, Math.max(from + 1, (int) Math.round(centre + reach / 2)));
            float sum = 0;
            for (int i = from; i < to; i++) {
                sum += values.at(i);
            }
            return sum / (to - from);
        }
        double place = centre - 0.5;
        int base = (int) Math.floor(place);
        float t = (float) (place - base);
        float a = values.at(clamp(base - 1, length));
        float b = values.at(clamp(base, length));
        float c = values.at(clamp(base + 1, length));
        float d = values.at(clamp(base + 2, length));
        return b + 0.5f * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    }

    private static int clamp(int i, int length) {
        return Math.max(0, Math.min(length - 1, i));
    }

    /** The threshold that parts two heaps of values best (Otsu 1979). */
    static int threshold(Grey picture) {
        long[] counts = new long[256];
        for (byte p : picture.pixels()) {
            counts[p & 0xff]++;
        }
        long total = picture.pixels().length;
        double sum = 0;
        for (int v = 0; v < 256; v++) {
            sum += (double) v * counts[v];
        }
        double below = 0;
        long n = 0;
        double best = -1;
        int threshold = 128;
        for (int v = 0; v < 255; v++) {
            n += counts[v];
            below += (double) v * counts[v];
            if (n > 0 && n < total) {
                double apart = below / n - (sum - below) / (total - n);
                double between = apart * apart * n * (total - n);
                if (between > best) {
                    best = between;
                    threshold = v;
                }
            }
        }
        return threshold;
    }

    /** Black where it is as dark as the threshold or darker, else white. */
    static Grey blackAndWhite(Grey picture, int threshold) {
        byte[] out = new byte[picture.pixels().length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (byte) ((picture.pixels()[i] & 0xff) <= threshold ? 0 : 255);
        }
        return new Grey(picture.width(), picture.height(), out);
    }
}
