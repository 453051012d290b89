package org.misecue.shown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the lines of writing in the sides of strokes: rows that hold many, between rows that hold few. */
final class StripFinder {

    /** Rows that hold fewer, of what rows near by hold, lie between lines. */
    private static final double FEW = 0.3;
    /** How near, in pixels of the small picture. */
    private static final int NEAR = 10;

    /** Of the fullest row of a line, what rows of its small letters hold. */
    private static final double BODY = 0.5;

    private static final int FEWEST = 5;
    private static final int LOWEST = 3;
    private static final int HIGHEST = 60;
    /** A gap of so many letters' heights parts two lines that stand side by side. */
    private static final double GAP = 3;

    private static final int LEAST_STROKES = 6;
    /** In letters' heights as they are usual in the part, what is longer is a frame. */
    private static final double FRAME = 3.2;

    /** In letters' heights, the longest side of a stroke; what is longer is a frame. */
    static final double LONGEST = 2.3;

    private StripFinder() {}

    /** The lines' bodies, from the tops of small letters to their feet, in the part's pixels. */
    static List<Box> find(Plates plates) {
        int[] counts = counts(plates);
        int rows = counts.length;
        List<Box> strips = new ArrayList<>();
        int from = -1;
        for (int y = 0; y <= rows; y++) {
            boolean full = y < rows && counts[y] >= Math.max(FEWEST, FEW * most(counts, y));
            if (full && from < 0) {
                from = y;
            } else if (!full && from >= 0) {
                if (y - from >= LOWEST && y - from <= HIGHEST) {
                    int[] body = body(counts, from, y);
                    strips.addAll(split(plates, body[0], body[1]));
                }
                from = -1;
            }
        }
        return strips;
    }

    private static int[] counts(Plates plates) {
        Exposure part = plates.part();
        int[] counts = new int[plates.rows(part.whole().height()) + 1];
        double longest = FRAME * part.letter();
        for (int y = 0; y < counts.length; y++) {
            int top = (int) Math.ceil(y * part.grain());
            Box row = new Box(0, top, part.whole().width(), top + 1);
            counts[y] = plates.places(row, longest, 1).length + plates.places(row, longest, -1).length;
        }
        return counts;
    }

    /** The rows between where small letters begin and end: those that hold most, without what rises and hangs. */
    private static int[] body(int[] counts, int from, int to) {
        int most = Arrays.stream(counts, from, to).max().orElse(0);
        int[] longest = {from, from};
        int start = from;
        for (int y = from; y <= to; y++) {
            boolean full = y < to && counts[y] >= BODY * most;
            if (!full) {
                if (y - start > longest[1] - longest[0]) {
                    longest = new int[] {start, y};
                }
                start = y + 1;
            }
        }
        return longest[1] - longest[0] >= LOWEST ? longest : new int[] {from, to};
    }

    private static int most(int[] counts, int y) {
        return Arrays.stream(counts, Math.max(0, y - NEAR), Math.min(counts.length, y + NEAR + 1))
                .max()
                .orElse(0);
    }

    private static List<Box> split(Plates plates, int from, int to) {
        double grain = plates.part().grain();
        int top = (int) (from * grain);
        int bottom = (int) Math.ceil(to * grain);
        Box row = new Box(0, top, plates.part().whole().width(), bottom);
        double longest = LONGEST * (bottom - top);
        int[] places = IntStream.concat(
                        IntStream.of(plates.places(row, longest, 1)), IntStream.of(plates.places(row, longest, -1)))
                .sorted()
                .toArray();
        List<Box> strips = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= places.length && places.length > 0; i++) {
            if (i == places.length || places[i] - places[i - 1] > GAP * (bottom - top)) {
                Box strip = new Box(places[first], top, places[i - 1] + 1, bottom);
                if (strip.width() > strip.height() && plates.strokes(strip, longest) >= LEAST_STROKES) {
                    strips.add(strip);
                }
                first = i;
            }
        }
        return strips;
    }
}
