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

    private TableRows() {}

    /** The texts of the lines, in reading order; the row that only names the columns is left out. */
    static List<String> lines(List<List<String>> rows) {
        List<List<String>> body = rows.stream().filter(row -> !isHead(row)).toList();
        return isColumns(body) ? byColumn(body) : byRow(body);
    }

    private static boolean isHead(List<String> row) {
        return row.size() > 1
                && row.stream().allMatch(cell -> HEAD.matcher(cell.strip()).matches());
    }

    /** Whether most rows hold a whole ingredient in each of their cells. */
    private static boolean isColumns(List<List<String>> rows) {
        long full = rows.stream().filter(row -> row.size() > 1).count();
        long twice = rows.stream()
                .filter(row -> row.stream()
                                .filter(cell -> AMOUNT_AND_NAME.matcher(cell).matches())
                                .count()
                        > 1)
                .count();
        return twice > 0 && twice * 2 >= full;
    }

    private static List<String> byRow(List<List<String>> rows) {
        return rows.stream()
                .map(row -> (String.join("/", amountsBehind(row)) + " " + String.join(" ", names(row)))
                        .replaceAll("\\h+", " ")
                        .strip())
                .filter(line -> !line.isEmpty())
                .toList();
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

    private static List<String> byColumn(List<List<String>> rows) {
        List<String> lines = new ArrayList<>();
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        for (int column = 0; column < columns; column++) {
            for (List<String> row : rows) {
                if (column < row.size() && !row.get(column).isBlank()) {
                    lines.add(row.get(column).strip());
                }
            }
        }
        return lines;
    }
}
