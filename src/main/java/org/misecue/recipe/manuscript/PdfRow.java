package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.recipe.manuscript.PdfWords.Word;

/**
 * The words of a page that stand on one line, over all its columns.
 *
 * @param cells the words, parted where a wide gap is; at least one
 */
record PdfRow(List<Cell> cells) {

    /** Wider than the blanks of a justified line mostly are, in sizes of the letters. */
    private static final double GAP = 0.7;
    /** Raised and sunk letters belong to the line. */
    private static final double SAME_LINE = 0.5;

    private static final Pattern MARK = Pattern.compile("[-–—•*·‣◦▪●○□☐✓\uF0B7]|\\(?\\d{1,2}[.)]");
    private static final Pattern AMOUNT = Pattern.compile(
            "(?i)(?:about|approx\\.?|an?)?\\h*(?:[\\d½¼¾⅓⅔⅛⅜⅝⅞⁄/.,–-]+\\h*|(?:pinch|handful|knob|dash)\\b)"
                    + "(?:(?:k?g|mg|[mcd]?l|oz|lbs?|pints?|tbsps?|tsps?|cups?|grams?|ounces?|litres?|fl|pinch(?:es)?|sticks?|€|£)\\b\\.?|[\\d½¼¾⅓⅔⅛/.,–()-]|\\h)*+");
    private static final Pattern FIGURE = Pattern.compile(".*[\\d½¼¾⅓⅔⅛].*");

    /** Words that follow each other closely. */
    record Cell(String text, double left, double right, double base, double size) {

        private Cell with(Word word) {
            return new Cell(text + " " + word.text(), left, word.right(), base, Math.max(size, word.size()));
        }

        boolean isAmount() {
            return AMOUNT.matcher(text).matches();
        }

        boolean hasFigure() {
            return FIGURE.matcher(text).matches();
        }
    }

    /** The lines of a page from top to bottom. */
    static List<PdfRow> of(List<Word> page) {
        List<PdfRow> rows = new ArrayList<>();
        List<Word> row = new ArrayList<>();
        for (Word word :
                page.stream().sorted(Comparator.comparingDouble(Word::base)).toList()) {
            if (!row.isEmpty() && word.base() - row.get(0).base() > SAME_LINE * word.size()) {
                rows.add(row(row));
                row.clear();
            }
            row.add(word);
        }
        if (!row.isEmpty()) {
            rows.add(row(row));
        }
        return rows;
    }

    private static PdfRow row(List<Word> words) {
        List<Cell> cells = new ArrayList<>();
        for (Word word :
                words.stream().sorted(Comparator.comparingDouble(Word::left)).toList()) {
            int last = cells.size() - 1;
            if (last >= 0 && follows(cells.get(last), word)) {
                cells.set(last, cells.get(last).with(word));
            } else {
                cells.add(new Cell(word.text(), word.left(), word.right(), word.base(), word.size()));
            }
        }
        return new PdfRow(cells);
    }

    /** A bullet or a number belongs to the words behind it, however wide the tab is. */
    private static boolean follows(Cell cell, Word word) {
        double gap = word.left() - cell.right();
        return gap < GAP * word.size() || MARK.matcher(cell.text()).matches() && gap < 5 * word.size();
    }

    String text() {
        return cells.stream().map(Cell::text).collect(Collectors.joining(" "));
    }

    double left() {
        return cells.get(0).left();
    }

    double base() {
        return cells.get(0).base();
    }

    double size() {
        return cells.get(0).size();
    }

    boolean crosses(double x) {
        return cells.stream().anyMatch(cell -> cell.left() < x - 1 && cell.right() > x + 1);
    }

    List<Cell> leftOf(double x) {
        return cells.stream().filter(cell -> cell.left() < x - 1).toList();
    }

    List<Cell> rightOf(double x) {
        return cells.stream().filter(cell -> cell.left() >= x - 1).toList();
    }
}
