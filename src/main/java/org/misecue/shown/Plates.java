package org.misecue.shown;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.misecue.footage.Grey;

/** A part that is being read, with its pictures put together and its strokes counted, each once. */
final class Plates {

    private final Exposure part;
    private final Map<Boolean, Grey> together = new HashMap<>();
    private final Map<Boolean, Grey> middle = new HashMap<>();
    private final int columns;
    private final int[][] sides;

    Plates(Exposure part) {
        this.part = part;
        columns = (int) (part.whole().width() / part.grain()) + 2;
        sides = new int[(int) (part.whole().height() / part.grain()) + 2][columns];
        Exposure.Strokes strokes = part.strokes();
        for (int i = 0; i < strokes.count(); i++) {
            if (strokes.sideways()[i] != 0) {
                sides[row(strokes.down()[i])][column(strokes.across()[i])] = strokes.sideways()[i];
            }
        }
    }

    Exposure part() {
        return part;
    }

    private int row(double y) {
        return Math.max(0, Math.min(sides.length - 1, (int) (y / part.grain())));
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) (x / part.grain())));
    }

    /** @see Tone#together */
    Grey together(boolean light) {
        return together.computeIfAbsent(light, is -> Tone.together(part.pictures(), is));
    }

    /** @see Tone#middle */
    Grey middle(boolean light) {
        return middle.computeIfAbsent(light, is -> Tone.middle(part.pictures(), is));
    }

    /** How many rows strokes fill that have both their sides in a box; a frame has one there. */
    double strokes(Box in, double longest) {
        int[] left = places(in, longest, 1);
        int[] right = places(in, longest, -1);
        return Math.min(left.length, right.length);
    }

    int leftmost(Box in, double longest) {
        return IntStream.concat(IntStream.of(places(in, longest, 1)), IntStream.of(places(in, longest, -1)))
                .min()
                .orElse(in.right());
    }

    int rightmost(Box in, double longest) {
        return 1
                + IntStream.concat(IntStream.of(places(in, longest, 1)), IntStream.of(places(in, longest, -1)))
                        .max()
                        .orElse(in.left());
    }

    int rows(int pixels) {
        return (int) (pixels / part.grain());
    }

    /**
     * Where the sides of strokes are in a box, without those longer than a length: they belong to frames.
     *
     * @param sign as of {@link Exposure#sideways}
     * @return from left to right, in the part's pixels
     */
    int[] places(Box in, double longest, int sign) {
        Box box = in.and(part.whole());
        if (box.isEmpty()) {
            return new int[0];
        }
        int most = (int) Math.ceil(longest / part.grain());
        return IntStream.rangeClosed(column(box.left()), column(box.right() - 1))
                .flatMap(x -> IntStream.rangeClosed(row(box.top()), row(box.bottom() - 1))
                        .filter(y -> sides[y][x] == sign && run(x, y, most) <= most)
                        .map(y -> (int) ((x + 0.5) * part.grain())))
                .toArray();
    }

    /** How long the side is that a point belongs to, counted to just above a length. */
    private int run(int x, int y, int most) {
        int top = y;
        while (top > 0 && sides[top - 1][x] == sides[y][x] && y - top <= most) {
            top--;
        }
        int bottom = y;
        while (bottom + 1 < sides.length && sides[bottom + 1][x] == sides[y][x] && bottom - top <= most) {
            bottom++;
        }
        return bottom - top + 1;
    }
}
