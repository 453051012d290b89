package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.misecue.page.Pages;
import org.misecue.prep.Checklist.Item;

/** Boxes to tick, in letters that are read at arm's length with floury hands. */
public final class ChecklistPage {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double MARGIN_MM = 9;
    private static final double GAP_MM = 6;
    private static final int COLUMNS = 2;

    /** As large as two pages allow; 16 points are read at arm's length (common practice, no source). */
    private static final List<Integer> SIZES = List.of(20, 18, 17, 16);

    /** Points. */
    private static final double BOX = 18;

    private static final double LINE_HEIGHT = 1.12;
    private static final double AFTER = 2.5;

    private ChecklistPage() {}

    /** A list too long for two pages of the smallest letters takes more pages. */
    public static String html(PrepPlan plan, LabelSheet.Paper paper) {
        List<Item> items = Checklist.of(plan);
        int points = SIZES.stream()
                .filter(size -> columns(plan.title(), items, paper, size).size() <= 2 * COLUMNS)
                .findFirst()
                .orElse(SIZES.get(SIZES.size() - 1));
        List<List<Item>> columns = columns(plan.title(), items, paper, points);
        return Pages.fill(
                "prep/checklist.jte",
                Map.of(
                        "title", plan.title(),
                        "paper", paper,
                        "points", points,
                        "below", below(plan.title(), paper, points),
                        "pages", PrepWords.rows(columns, COLUMNS)));
    }

    /** Fills column after column; a heading is never the last of one. */
    private static List<List<Item>> columns(String title, List<Item> items, LabelSheet.Paper paper, int points) {
        double full = (paper.height() - 2 * MARGIN_MM) * POINTS_PER_MM;
        double first = full - below(title, paper, points);
        List<List<Item>> columns = new ArrayList<>(List.of(new ArrayList<>()));
        double used = 0;
        for (int i = 0; i < items.size(); i++) {
            double high = high(items.get(i), paper, points);
            boolean led = items.get(i).isHeading() && i + 1 < items.size();
            double wanted = high + (led ? high(items.get(i + 1), paper, points) : 0);
            double room = columns.size() <= COLUMNS ? first : full;
            if (used > 0 && used + wanted > room) {
                columns.add(new ArrayList<>());
                used = 0;
            }
            columns.get(columns.size() - 1).add(items.get(i));
            used += high;
        }
        return columns;
    }

    /** The room that the title takes on the first page, in points. */
    private static double below(String title, LabelSheet.Paper paper, int points) {
        double width = (paper.width() - 2 * MARGIN_MM) * POINTS_PER_MM;
        return Wrap.lines(title, width, points) * points * LINE_HEIGHT + 2 * AFTER;
    }

    private static double high(Item item, LabelSheet.Paper paper, int points) {
        double width = columnWidth(paper) * POINTS_PER_MM - item.boxes() * BOX - AFTER;
        double heading = item.isHeading() ? 3 * AFTER : 0;
        return Wrap.lines(item.words(), width, points) * points * LINE_HEIGHT + AFTER + heading;
    }

    /** In millimetres. */
    static double columnWidth(LabelSheet.Paper paper) {
        return (paper.width() - 2 * MARGIN_MM - (COLUMNS - 1) * GAP_MM) / COLUMNS;
    }

    /** Of a column on its page, in millimetres from the left edge. */
    static double left(LabelSheet.Paper paper, int column) {
        return MARGIN_MM + column * (columnWidth(paper) + GAP_MM);
    }

    /** The style of a column's place on its page. */
    public static String place(LabelSheet.Paper paper, int column, int page, double below) {
        double top = MARGIN_MM * POINTS_PER_MM + (page == 0 ? below : 0);
        return String.format(
                java.util.Locale.ROOT,
                "left: %.2fmm; top: %.2fpt; width: %.2fmm",
                left(paper, column),
                top,
                columnWidth(paper));
    }
}
