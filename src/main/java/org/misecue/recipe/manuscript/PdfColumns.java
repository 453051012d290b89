package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.misecue.recipe.manuscript.PdfRow.Cell;

/**
 * Finds the columns of a page by the band between them that no line crosses, and puts the rows of the left one before
 * those of the right one. Names and their amounts side by side are rows of a table and stay together.
 */
final class PdfColumns {

    private static final int FEWEST_LINES = 3;
    private static final int FEWEST_BESIDE = 2;
    /** Columns of a page; more of them within each other are no text. */
    private static final int DEEPEST = 6;

    private static final Pattern METHOD =
            Pattern.compile("(?i)(?:the )?(?:method|directions|instructions|preparation|steps|notes?|tips?)\\b.{0,12}");

    /** A band left of {@code x} that the rows from {@code from} up to, not with, {@code to} leave free. */
    private record Gutter(double x, int from, int to) {

        int length() {
            return to - from;
        }
    }

    private PdfColumns() {}

    /** Blocks of rows, one column each, in the order in which people read them. */
    static List<List<PdfRow>> blocks(List<PdfRow> rows) {
        List<List<PdfRow>> blocks = new ArrayList<>();
        part(rows, 0, blocks);
        return blocks;
    }

    private static void part(List<PdfRow> rows, int depth, List<List<PdfRow>> blocks) {
        Optional<Gutter> gutter = depth > DEEPEST ? Optional.empty() : widest(rows);
        if (gutter.isEmpty()) {
            if (!rows.isEmpty()) {
                blocks.add(rows);
            }
            return;
        }
        Gutter found = gutter.get();
        List<PdfRow> beside = rows.subList(found.from(), found.to());
        part(rows.subList(0, found.from()), depth + 1, blocks);
        part(column(beside, row -> row.leftOf(found.x())), depth + 1, blocks);
        part(column(beside, row -> row.rightOf(found.x())), depth + 1, blocks);
        part(rows.subList(found.to(), rows.size()), depth + 1, blocks);
    }

    private static List<PdfRow> column(List<PdfRow> rows, java.util.function.Function<PdfRow, List<Cell>> side) {
        return rows.stream()
                .map(side)
                .filter(Predicate.not(List::isEmpty))
                .map(PdfRow::new)
                .toList();
    }

    /** The gutter along the most rows. */
    private static Optional<Gutter> widest(List<PdfRow> rows) {
        Optional<Gutter> widest = Optional.empty();
        for (double x : starts(rows)) {
            int from = 0;
            for (int at = 0; at <= rows.size(); at++) {
                if (at == rows.size() || rows.get(at).crosses(x)) {
                    int to = end(rows, from, at, x);
                    Gutter gutter = new Gutter(x, from, to);
                    if (gutter.length() > widest.map(Gutter::length).orElse(0) && parts(rows.subList(from, to), x)) {
                        widest = Optional.of(gutter);
                    }
                    from = at + 1;
                }
            }
        }
        return widest;
    }

    /** Where at least two lines begin: a column has a straight left edge. */
    private static List<Double> starts(List<PdfRow> rows) {
        List<Double> lefts = rows.stream()
                .flatMap(row -> row.cells().stream())
                .map(Cell::left)
                .sorted()
                .toList();
        List<Double> starts = new ArrayList<>();
        for (int at = 1; at < lefts.size(); at++) {
            double start = lefts.get(at - 1);
            if (lefts.get(at) - start < 1 && (starts.isEmpty() || start - starts.get(starts.size() - 1) > 1)) {
                starts.add(start);
            }
        }
        return starts;
    }

    /** What follows below both columns is no longer beside: a heading of the method, or the heading of a wide text. */
    private static int end(List<PdfRow> rows, int from, int to, double x) {
        int last = to - 1;
        while (last >= from && rows.get(last).rightOf(x).isEmpty()) {
            last--;
        }
        int cut = to;
        for (int at = last + 1; at < to && last >= from; at++) {
            if (METHOD.matcher(rows.get(at).text()).matches()) {
                return at;
            }
            if (to < rows.size() && PdfText.isGap(rows.subList(from, to), rows.get(at - 1), rows.get(at))) {
                cut = at;
            }
        }
        return cut;
    }

    private static boolean parts(List<PdfRow> rows, double x) {
        List<PdfRow> left = column(rows, row -> row.leftOf(x));
        List<PdfRow> right = column(rows, row -> row.rightOf(x));
        long straight = right.stream().filter(row -> row.left() < x + 1).count();
        return left.size() >= FEWEST_LINES
                && right.size() >= FEWEST_LINES
                && straight * 3 >= right.size()
                && beside(left, right) >= FEWEST_BESIDE
                && !isTable(rows, x);
    }

    private static long beside(List<PdfRow> left, List<PdfRow> right) {
        return right.stream()
                .filter(row -> left.stream().anyMatch(other -> Math.abs(other.base() - row.base()) < row.size()))
                .count();
    }

    /** Whether most rows that have words on both sides have an amount alone on one of them. */
    private static boolean isTable(List<PdfRow> rows, double x) {
        List<PdfRow> both = rows.stream()
                .filter(row -> !row.leftOf(x).isEmpty() && !row.rightOf(x).isEmpty())
                .toList();
        long tabular = both.stream()
                .filter(row -> isPair(row.leftOf(x), row.rightOf(x)))
                .count();
        return tabular > 0 && tabular * 2 >= both.size();
    }

    private static boolean isPair(List<Cell> left, List<Cell> right) {
        return left.stream().allMatch(Cell::isAmount)
                || right.stream().allMatch(Cell::isAmount)
                || left.get(left.size() - 1).isAmount() && right.stream().noneMatch(Cell::hasFigure);
    }
}
