package org.misecue.shown;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The edges by which something that came to stand in the picture is known again. */
final class Trace {

    /** The side of the squares in which edges are missed. */
    private static final int SQUARE = 16;
    /** Edges in a square whose loss is noticed. */
    private static final int NOTICED = 10;
    /** The share of a square's edges below which it changed. */
    private static final double CHANGED = 0.3;
    /** Edges of letters are there in so many of the pictures looked at. */
    private static final double STEADY = 0.7;

    private final int width;
    private int[] spots;
    private byte[] kinds;
    private int[] came;
    private int[] hits;
    private int looks;

    private Trace(int width, int[] spots, byte[] kinds, int[] came) {
        this.width = width;
        this.spots = spots;
        this.kinds = kinds;
        this.came = came;
        this.hits = new int[spots.length];
    }

    /** Of the new edges in a box. */
    static Trace of(StandingEdges edges, Box box) {
        int width = edges.width();
        Box inside = box.and(new Box(1, 1, width - 1, edges.height() - 1));
        int[] spots = IntStream.range(inside.top(), inside.bottom())
                .flatMap(y -> IntStream.range(inside.left(), inside.right()).map(x -> y * width + x))
                .filter(edges::isNew)
                .toArray();
        byte[] kinds = new byte[spots.length];
        int[] came = new int[spots.length];
        for (int i = 0; i < spots.length; i++) {
            kinds[i] = edges.kind(spots[i]);
            came[i] = edges.since(spots[i]);
        }
        return new Trace(width, spots, kinds, came);
    }

    int size() {
        return spots.length;
    }

    /** The share of it that is there. */
    double there(StandingEdges edges) {
        int there = 0;
        for (int i = 0; i < spots.length; i++) {
            there += edges.isThere(spots[i], kinds[i]) ? 1 : 0;
        }
        return spots.length == 0 ? 0 : (double) there / spots.length;
    }

    /** Counts which edges are there, for {@link #steady}. */
    void look(StandingEdges edges) {
        looks++;
        for (int i = 0; i < spots.length; i++) {
            hits[i] += edges.isThere(spots[i], kinds[i]) ? 1 : 0;
        }
    }

    boolean hasChangedSquare(StandingEdges edges) {
        int across = width / SQUARE + 1;
        int[] all = new int[across * (edges.height() / SQUARE + 1)];
        int[] there = new int[all.length];
        for (int i = 0; i < spots.length; i++) {
            int square = spots[i] / width / SQUARE * across + spots[i] % width / SQUARE;
            all[square]++;
            there[square] += edges.isThere(spots[i], kinds[i]) ? 1 : 0;
        }
        return IntStream.range(0, all.length).anyMatch(s -> all[s] >= NOTICED && there[s] < CHANGED * all[s]);
    }

    /** Leaves only what was there in most of the pictures looked at: letters stay, what moves behind them does not. */
    void steady() {
        keep(i -> hits[i] >= STEADY * looks);
    }

    /** Leaves only what is in boxes. */
    void within(Iterable<Box> boxes) {
        keep(i -> {
            for (Box box : boxes) {
                if (isIn(i, box)) {
                    return true;
                }
            }
            return false;
        });
    }

    private void keep(IntPredicate wanted) {
        int[] kept = IntStream.range(0, spots.length).filter(wanted).toArray();
        byte[] keptKinds = new byte[kept.length];
        for (int i = 0; i < kept.length; i++) {
            keptKinds[i] = kinds[kept[i]];
        }
        kinds = keptKinds;
        came = Arrays.stream(kept).map(i -> came[i]).toArray();
        hits = Arrays.stream(kept).map(i -> hits[i]).toArray();
        spots = Arrays.stream(kept).map(i -> spots[i]).toArray();
    }

    private boolean isIn(int i, Box box) {
        return box.contains(spots[i] % width, spots[i] / width);
    }

    int count(Box in) {
        return (int) IntStream.range(0, spots.length).filter(i -> isIn(i, in)).count();
    }

    /** The picture at which most in a box came: a few edges may have been there before by chance. */
    int cameAt(Box in, int otherwise) {
        return cameAt(in, 0.25, otherwise);
    }

    /** The picture at which half of what is in a box had come, for boxes in which old edges were found anew. */
    int changedAt(Box in, int otherwise) {
        return cameAt(in, 0.5, otherwise);
    }

    private int cameAt(Box in, double share, int otherwise) {
        int[] since = IntStream.range(0, spots.length)
                .filter(i -> isIn(i, in))
                .map(i -> came[i])
                .sorted()
                .toArray();
        return since.length == 0 ? otherwise : since[(int) (share * since.length)];
    }

    /** As the reader wants it, for a part of the whole pictures, which are larger by a factor. */
    Exposure.Strokes strokes(Box part, double factor) {
        double[] across = new double[spots.length];
        double[] down = new double[spots.length];
        int[] sideways = new int[spots.length];
        for (int i = 0; i < spots.length; i++) {
            across[i] = (spots[i] % width + 0.5) * factor - part.left();
            down[i] = (spots[i] / width + 0.5) * factor - part.top();
            sideways[i] = StandingEdges.sideways(kinds[i]);
        }
        return new Exposure.Strokes(across, down, sideways);
    }
}
