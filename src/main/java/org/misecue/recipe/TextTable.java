package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;

/** Rows of words in aligned columns; the last column is as wide as it likes. */
final class TextTable {

    private final List<List<String>> rows = new ArrayList<>();

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    void writeTo(StringBuilder text, String indent) {
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int column = 0; column < row.size(); column++) {
                String cell = row.get(column);
                line.append(cell)
                        .append(" ".repeat(Math.max(0, width(column) - length(cell))))
                        .append("  ");
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
    }

    private int width(int column) {
        return rows.stream()
                .filter(row -> row.size() > column)
                .mapToInt(row -> length(row.get(column)))
                .max()
                .orElse(0);
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
