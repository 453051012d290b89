package org.misecue.shown;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.misecue.footage.Grey;

/**
 * Letters that are told from the picture behind them by an outline or a shadow only, because the picture is as light as
 * they are. Whoever walks in from the side of the picture comes over the ground to an outline, over it into a letter,
 * and out of that over the next outline into the hole of an o.
 */
final class Outlines {

    /** Lighter is outline; the picture is turned over, so that letters and the ground are dark. */
    private static final int LIGHT = 140;
    /** Borders crossed on the way into a letter, and in turn into what lies in a hole of it. */
    private static final int INTO_LETTER = 2;

    private static final int ROUND = 4;
    /** Of 255, how much less light than the letters the gap of a 3 must be, to be seen as a gap where outlines close it. */
    private static final int APART = 16;

    private static final double DARK = 0.25;
    /** Outlines are followed in a picture so much larger. */
    private static final double FINE = 2;

    private Outlines() {}

    /** The letters within the outlines of a picture in another size, black on white with soft edges. */
    static Grey filled(Grey picture, double scale) {
        return Tone.scaled(filled(Tone.scaled(picture, FINE * scale)), 1 / FINE);
    }

    /** The letters within the outlines, black on white; none where the ground is as light as an outline. */
    static Grey filled(Grey picture) {
        if (!hasGround(picture)) {
            byte[] white = new byte[picture.pixels().length];
            Arrays.fill(white, (byte) 255);
            return new Grey(picture.width(), picture.height(), white);
        }
        int[] crossed = crossed(picture);
        byte[] out = new byte[crossed.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (byte) (crossed[i] % ROUND == INTO_LETTER ? 0 : 255);
        }
        int letters = dark(
                picture, IntStream.range(0, out.length).filter(i -> out[i] == 0).toArray());
        for (Components.Piece piece : Components.of(new Grey(picture.width(), picture.height(), out))) {
            if (dark(picture, piece.points()) > letters + APART) {
                for (int point : piece.points()) {
                    out[point] = (byte) 255;
                }
            }
        }
        return new Grey(picture.width(), picture.height(), out);
    }

    /** Whether most of the picture's side is no outline: else what is dark stands there plainly, or is the outline. */
    private static boolean hasGround(Grey picture) {
        int[] side = IntStream.range(0, picture.pixels().length)
                .filter(i -> isAtSide(picture, i))
                .toArray();
        return 2 * IntStream.of(side).filter(i -> isOutline(picture, i)).count() < side.length;
    }

    private static boolean isAtSide(Grey picture, int i) {
        int column = i % picture.width();
        return column == 0
                || column == picture.width() - 1
                || i < picture.width()
                || i >= picture.pixels().length - picture.width();
    }

    /** How dark points are, but for the soft edges of what they belong to. */
    private static int dark(Grey picture, int[] points) {
        int[] values = IntStream.of(points)
                .map(i -> picture.pixels()[i] & 0xff)
                .sorted()
                .toArray();
        return values.length == 0 ? 255 : values[(int) (DARK * values.length)];
    }

    /** How many borders lie between the side of the picture and each point, on the way that crosses the fewest. */
    private static int[] crossed(Grey picture) {
        int width = picture.width();
        int height = picture.height();
        int[] crossed = new int[width * height];
        Arrays.fill(crossed, Integer.MAX_VALUE);
        ArrayDeque<Integer> waiting = new ArrayDeque<>();
        for (int i = 0; i < crossed.length; i++) {
            if (isAtSide(picture, i)) {
                crossed[i] = isOutline(picture, i) ? 1 : 0;
                if (crossed[i] == 0) {
                    waiting.addFirst(i);
                } else {
                    waiting.addLast(i);
                }
            }
        }
        while (!waiting.isEmpty()) {
            int at = waiting.removeFirst();
            int x = at % width;
            int y = at / width;
            for (int ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
                for (int nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
                    int next = ny * width + nx;
                    boolean same = isOutline(picture, at) == isOutline(picture, next);
                    boolean slanting = nx != x && ny != y;
                    // Outlines are closed by their corners too, so nothing slips through between two of them.
                    if (slanting && !(same && isOutline(picture, at))) {
                        continue;
                    }
                    int steps = crossed[at] + (same ? 0 : 1);
                    if (steps < crossed[next]) {
                        crossed[next] = steps;
                        if (same) {
                            waiting.addFirst(next);
                        } else {
                            waiting.addLast(next);
                        }
                    }
                }
            }
        }
        return crossed;
    }

    private static boolean isOutline(Grey picture, int i) {
        return (picture.pixels()[i] & 0xff) > LIGHT;
    }
}
