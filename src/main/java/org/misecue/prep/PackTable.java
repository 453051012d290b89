package org.misecue.prep;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.quantity.Unit;

/** The table {@code packs.csv}: in which sizes a shop has an ingredient. */
final class PackTable {

    private static final String AISLE = "aisle:";

    /** @param sizes smallest first */
    record Row(Unit unit, List<Long> sizes, String word) {}

    private PackTable() {}

    /** Of the ingredient by its name in the pantry, or of the rest of its aisle; empty for what is sold loose. */
    static Optional<Row> of(String ingredient, String aisle) {
        return Optional.ofNullable(Table.ROWS.get(ingredient))
                .or(() -> Optional.ofNullable(Table.ROWS.get(AISLE + aisle)));
    }

    static List<String> names() {
        return Table.ROWS.keySet().stream().sorted().toList();
    }

    /** Read on first use. */
    private static final class Table {
        static final Map<String, Row> ROWS = read();

        private static Map<String, Row> read() {
            Map<String, Row> rows = new HashMap<>();
            for (List<String> cells : Resources.rows("packs.csv")) {
                List<Long> sizes = Arrays.stream(cells.get(2).split(" "))
                        .map(Long::valueOf)
                        .sorted()
                        .toList();
                Row row = new Row(Unit.ofCode(cells.get(1)).orElseThrow(), sizes, cells.get(3));
                Arrays.stream(cells.get(0).split(";")).forEach(name -> rows.put(name.strip(), row));
            }
            return Map.copyOf(rows);
        }
    }
}
