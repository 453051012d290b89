package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table as lines. Amount and name in two cells make one line; where each cell is a line of its own, the columns are
 * read one after the other, as people do.
 */
final class TableRows {

    private static final Pattern HEAD = Pattern.compile(
            "(?:amounts?|quantit(?:y|ies)|qty\\.?|how much|weights?|measures?|metric|imperial|us|cups?(?: etc\\.?)?|volume|units?|grams?|g|ounces|oz|ingredients?|names?|items?|what|preparation|notes?)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FIGURE = Pattern.compile("^(?:[\\d½¼¾⅓⅔⅛⅜⅝⅞]|(?:an?|half|some)\\h).*");
    private static final Pattern AMOUNT_AND_NAME = Pattern.compile(
            "^[\\d½¼¾⅓⅔⅛⅜⅝⅞][^\\p{L}]*(?:(?:k?g|m?l|oz|lb|tbsps?|tsps?|cups?)\\b\\.?)?\\h*\\p{L}{2,}.*");

    private static final Pattern BLANKS = Pattern.compile("\\h+");

    private TableRows() {}

    /** A row of a table; {@code line} is where it stands in the file, from 1, or 0 where the document has no lines. */
    record Row(int line, List<String> cells) {}

    /** The lines in reading order, each with the number of its row; the row that only names the columns is left out. */
    static List<Line> lines(List<Row> rows) {
        List<Row> body = rows.stream().filter(row -> !isHead(row.cells())).toList();
        List<Line> lines = new ArrayList<>();
        if (isColumns(body)) {
            addByColumn(lines, body);
        } else {
            body.forEach(row -> add(lines, row.line(), inOrder(row.cells())));
        }
        return lines;
    }

    private static void add(List<Line> lines, int number, String text) {
        Line line = Marks.line(number, BLANKS.matcher(text).replaceAll(" ").strip(), true);
        if (!line.text().isBlank()) {
            lines.add(line);
        }
    }

    /** Whether the row only names the columns. */
    static boolean isHead(List<String> row) {
        return row.size() > 1
                && row.stream().allMatch(cell -> HEAD.matcher(cell.strip()).matches());
    }

    /** Whether most rows hold a whole ingredient in each of their cells. */
    private static boolean isColumns(List<Row> rows) {
        long full = rows.stream().filter(row -> row.cells().size() > 1).count();
        long twice = rows.stream()
                .filter(row -> row.cells().stream()
                                .filter(cell -> AMOUNT_AND_NAME.matcher(cell).matches())
                                .count()
                        > 1)
                .count();
        return twice > 0 && twice * 2 >= full;
    }

    private static String inOrder(List<String> row) {
        return String.join("/", amountsBehind(row)) + " " + String.join(" ", names(row));
    }

    /** The amounts of a row that begins with the name: people write them before it. */
    private static List<String> amountsBehind(List<String> row) {
        return startsWithName(row)
                ? row.stream()
                        .skip(1)
                        .filter(cell -> FIGURE.matcher(cell).matches())
                        .toList()
                : List.of();
    }

    private static List<String> names(List<String> row) {
        List<String> amounts = amountsBehind(row);
        return row.stream().filter(cell -> !amounts.contains(cell)).toList();
    }

    private static boolean startsWithName(List<String> row) {
        return !row.isEmpty()
                && !row.get(0).isBlank()
                && !FIGURE.matcher(row.get(0)).matches();
    }

    private static void addByColumn(List<Line> lines, List<Row> rows) {
        int columns = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        for (int column = 0; column < columns; column++) {
            for (Row row : rows) {
                if (column < row.cells().size()) {
                    add(lines, row.line(), row.cells().get(column));
                }
            }
        }
    }
}
