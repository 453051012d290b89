package org.misecue.prep;

import java.util.List;

/** The way through a shop, by the table {@code aisles.csv}: chilled and frozen things last. */
final class Aisles {

    private static final String OTHER = "other";

    private Aisles() {}

    /** Where on the way an aisle comes; one that the table does not have comes with what nobody knows. */
    static int place(String aisle) {
        int place = Table.ORDER.indexOf(aisle);
        return place < 0 ? Table.ORDER.indexOf(OTHER) : place;
    }

    static boolean has(String aisle) {
        return Table.ORDER.contains(aisle);
    }

    /** Read on first use. */
    private static final class Table {
        static final List<String> ORDER =
                Resources.rows("aisles.csv").stream().map(cells -> cells.get(0)).toList();
    }
}
