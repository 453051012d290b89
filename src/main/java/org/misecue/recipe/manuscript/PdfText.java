package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.misecue.recipe.manuscript.PdfRow.Cell;
import org.misecue.recipe.manuscript.PdfWords.Word;

/** The pages of a PDF as plain text in reading order, with an empty line where a paragraph ends. */
final class PdfText {

    /** How much farther than lines usually are lines stand from each other where a paragraph ends. */
    private static final double GAP = 1.35;
    /** Lines farther apart than this, in sizes of the letters, are paragraphs each. */
    private static final double WIDEST_PITCH = 1.5;

    private static final double INDENT = 0.4;
    /** A page has a line or two above and below its text. */
    private static final int MOST_AT_EDGE = 2;

    private static final Pattern PAGE_NUMBER =
            Pattern.compile("(?i)(?:page|[-–])?\\h*\\d{1,3}\\h*(?:(?:of|/)\\h*\\d{1,3}|[-–])?");

    private static final Pattern FIGURES = Pattern.compile("\\d+");

    private final StringBuilder text = new StringBuilder();

    private PdfText() {}

    static String of(List<List<Word>> pages) {
        PdfText written = new PdfText();
        List<List<PdfRow>> rows = pages.stream().map(PdfRow::of).toList();
        Map<String, Integer> edges = edges(rows);
        for (int at = 0; at < rows.size(); at++) {
            PdfColumns.blocks(withoutEdges(rows.get(at), at > 0, edges)).forEach(written::write);
        }
        return written.text.toString();
    }

    /** How many pages begin or end with the same words: they name the document, not what is on the page. */
    private static Map<String, Integer> edges(List<List<PdfRow>> pages) {
        Map<String, Integer> edges = new HashMap<>();
        for (List<PdfRow> page : pages) {
            for (int at = 0; at < page.size(); at++) {
                if (Math.min(at, page.size() - 1 - at) < MOST_AT_EDGE) {
                    edges.merge(key(page.get(at)), 1, Integer::sum);
                }
            }
        }
        return edges;
    }

    private static String key(PdfRow row) {
        return FIGURES.matcher(row.text()).replaceAll("#") + "@" + Math.round(row.base());
    }

    /** The page without its number and without what stands over or under every page; the first page keeps its head. */
    private static List<PdfRow> withoutEdges(List<PdfRow> page, boolean further, Map<String, Integer> edges) {
        int from = 0;
        int to = page.size();
        while (from < Math.min(MOST_AT_EDGE, to - 1)
                && (isEdge(page, from, from + 1) || further && edges.getOrDefault(key(page.get(from)), 0) > 1)) {
            from++;
        }
        while (to > Math.max(page.size() - MOST_AT_EDGE, from + 1)
                && (isEdge(page, to - 1, to - 2) || edges.getOrDefault(key(page.get(to - 1)), 0) > 1)) {
            to--;
        }
        return page.subList(from, to);
    }

    private static boolean isEdge(List<PdfRow> page, int at, int next) {
        return PAGE_NUMBER.matcher(page.get(at).text()).matches()
                && isGap(page, page.get(Math.min(at, next)), page.get(Math.max(at, next)));
    }

    private void write(List<PdfRow> block) {
        double usual = usualPitch(block);
        double hang = Double.MAX_VALUE;
        for (int at = 0; at < block.size(); at++) {
            PdfRow row = block.get(at);
            if (TableRows.isHead(row.cells().stream().map(Cell::text).toList())) {
                continue;
            }
            boolean gap =
                    at == 0 ? !Character.isLowerCase(row.text().codePointAt(0)) : isGap(usual, block.get(at - 1), row);
            boolean marked = !Marks.line(0, row.text(), gap).is(Line.Kind.TEXT);
            hang = marked ? row.left() + INDENT * row.size() : gap ? Double.MAX_VALUE : hang;
            text.append(gap ? "\n" : "")
                    .append(!marked && row.left() > hang ? "  " : "")
                    .append(row.text())
                    .append('\n');
        }
    }

    /** Whether two rows that follow each other are farther apart than the rows of the block usually are. */
    static boolean isGap(List<PdfRow> block, PdfRow above, PdfRow below) {
        return isGap(usualPitch(block), above, below);
    }

    private static boolean isGap(double usual, PdfRow above, PdfRow below) {
        return below.base() - above.base() > GAP * Math.min(usual, WIDEST_PITCH * below.size());
    }

    private static double usualPitch(List<PdfRow> block) {
        List<Double> pitches = new ArrayList<>();
        for (int at = 1; at < block.size(); at++) {
            pitches.add(block.get(at).base() - block.get(at - 1).base());
        }
        return pitches.stream().sorted().skip(pitches.size() / 2).findFirst().orElse(0.0);
    }
}
