package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A table drawn with "|" and "---" in a text, as Markdown has it. */
final class PipeTable {

    private static final Pattern RULE = Pattern.compile("\\h*\\|?\\h*:?-+:?\\h*(?:\\|\\h*:?-+:?\\h*)*+\\|?\\h*");

    private PipeTable() {}

    /** The rows of a table whose first line has the number {@code first}; nothing if the lines are no table. */
    static List<TableRows.Row> rows(int first, List<String> lines) {
        boolean table = lines.size() > 2
                && lines.get(0).contains("|")
                && lines.get(1).contains("|")
                && RULE.matcher(lines.get(1)).matches();
        List<TableRows.Row> rows = new ArrayList<>();
        for (int at = 0; table && at < lines.size(); at++) {
            if (at != 1) {
                rows.add(new TableRows.Row(first + at, cells(lines.get(at))));
            }
        }
        return rows;
    }

    private static List<String> cells(String line) {
        String inner = line.strip().replaceFirst("^\\|", "").replaceFirst("\\|$", "");
        return List.of(inner.split("\\|", -1)).stream().map(String::strip).toList();
    }
}
