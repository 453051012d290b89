package org.misecue.shown;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Where edges that came to stand look like writing: close together, and along a row often to and fro between light and
 * dark, as the strokes of letters are. An outline of a bowl is not.
 */
final class WritingFinder {

    /** The side of the squares in which edges are counted. */
    private static final int SQUARE = 8;
    /** Edges in a square that belongs to writing. */
    private static final int FULL = 4;
    /** How many squares apart letters may be, and lines. */
    private static final int ASIDE = 3;

    private static final int BELOW = 2;
    /** Strokes' sides in a row of writing. */
    private static final int SIDES = 5;

    private static final int ROWS = 3;
    /** What is still coming, as a share: writing that is being faded in or typed is waited for. */
    private static final double COMING = 0.15;

    private static final int FEW = 12;

    /** Letters' heights in the small picture. */
    private static final int LOWEST = 4;

    private static final int HIGHEST = 40;
    private static final double USUAL = 10;

    private final int across;
    private final int down;
    private int[] counts;
    private int[] before;

    WritingFinder(int width, int height) {
        across = (width + SQUARE - 1) / SQUARE;
        down = (height + SQUARE - 1) / SQUARE;
        counts = new int[across * down];
        before = new int[across * down];
    }

    /** The boxes of writing that came to stand and does not grow any more. */
    List<Box> find(StandingEdges edges) {
        count(edges);
        boolean[] taken = new boolean[counts.length];
        List<Box> found = new ArrayList<>();
        for (int start = 0; start < counts.length; start++) {
            if (counts[start] >= FULL && !taken[start]) {
                List<Integer> squares = spread(start, taken);
                Box box = around(squares, edges);
                if (isSettled(squares) && looksWritten(edges, box)) {
                    found.add(box);
                }
            }
        }
        return found;
    }

    private void count(StandingEdges edges) {
        int[] spare = before;
        before = counts;
        counts = spare;
        Arrays.fill(counts, 0);
        for (int y = 1; y < edges.height() - 1; y++) {
            for (int x = 1; x < edges.width() - 1; x++) {
                if (edges.isNewStroke(y * edges.width() + x)) {
                    counts[y / SQUARE * across + x / SQUARE]++;
                }
            }
        }
    }

    private List<Integer> spread(int start, boolean[] taken) {
        List<Integer> squares = new ArrayList<>();
        ArrayDeque<Integer> waiting = new ArrayDeque<>(List.of(start));
        taken[start] = true;
        while (!waiting.isEmpty()) {
            int square = waiting.remove();
            squares.add(square);
            int row = square / across;
            int column = square % across;
            for (int y = Math.max(0, row - BELOW); y <= Math.min(down - 1, row + BELOW); y++) {
                for (int x = Math.max(0, column - ASIDE); x <= Math.min(across - 1, column + ASIDE); x++) {
                    int other = y * across + x;
                    if (!taken[other] && counts[other] >= FULL) {
                        taken[other] = true;
                        waiting.add(other);
                    }
                }
            }
        }
        return squares;
    }

    private Box around(List<Integer> squares, StandingEdges edges) {
        Box box = square(squares.get(0));
        for (int square : squares) {
            box = box.with(square(square));
        }
        return box.and(new Box(0, 0, edges.width(), edges.height()));
    }

    private Box square(int square) {
        int x = square % across * SQUARE;
        int y = square / across * SQUARE;
        return new Box(x, y, x + SQUARE, y + SQUARE);
    }

    private boolean isSettled(List<Integer> squares) {
        int is = 0;
        int was = 0;
        for (int square : squares) {
            is += counts[square];
            was += before[square];
        }
        return is - was <= Math.max(FEW, COMING * is);
    }

    private static boolean looksWritten(StandingEdges edges, Box box) {
        int rows = 0;
        for (int y = Math.max(1, box.top()); y < Math.min(edges.height() - 1, box.bottom()); y++) {
            if (sides(edges, box, y, edges::isNewStroke) >= SIDES && ++rows >= ROWS) {
                return true;
            }
        }
        return false;
    }

    /** How often a row goes to and fro between lighter and darker. */
    private static int sides(StandingEdges edges, Box box, int y, IntPredicate counts) {
        int sides = 0;
        int last = 0;
        for (int x = Math.max(1, box.left()); x < Math.min(edges.width() - 1, box.right()); x++) {
            int i = y * edges.width() + x;
            int side = counts.test(i) ? edges.sideways(i) : 0;
            if (side != 0 && side != last) {
                sides++;
                last = side;
            }
        }
        return sides;
    }

    /** About how high a small letter is: the usual height of the rows that go to and fro the most. */
    static double letter(StandingEdges edges, Box box) {
        int[] sides = IntStream.range(Math.max(1, box.top()), box.bottom())
                .map(y -> sides(edges, box, y, edges::isNew))
                .toArray();
        int most = Arrays.stream(sides).max().orElse(0);
        List<Integer> heights = new ArrayList<>();
        int run = 0;
        for (int i = 0; i <= sides.length; i++) {
            if (i < sides.length && 2 * sides[i] > most) {
                run++;
            } else {
                if (run >= LOWEST && run <= HIGHEST) {
                    heights.add(run);
                }
                run = 0;
            }
        }
        heights.sort(null);
        return heights.isEmpty() ? USUAL : heights.get(heights.size() / 2);
    }
}
