package org.misecue.pantry;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * How an ingredient fills a measure, and so how far weights of the measure differ: one row of {@code kinds.yaml}.
 *
 * @param less the lowest usual weight as a share of the stated one, from 0 to 1
 * @param more the highest usual weight as a share of the stated one, 1 or more
 */
record Kind(String name, RationalNumber less, RationalNumber more, String source) {

    private static final RationalNumber HUNDRED = Rationals.of(100);

    static Map<String, Kind> read(String file, InputStream in) {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        for (YamlRow row : YamlRows.read(file, in, List.of("kind", "less", "more", "source"))) {
            RationalNumber less = Rationals.ONE.subtract(row.number("less").divide(HUNDRED));
            RationalNumber more = Rationals.ONE.add(row.number("more").divide(HUNDRED));
            kinds.put(row.text("kind"), new Kind(row.text("kind"), less, more, row.text("source")));
        }
        return kinds;
    }

    /** The kinds that come with the program, by name. */
    static Map<String, Kind> all() {
        return Table.KINDS;
    }

    static Kind named(String name) {
        Kind kind = all().get(name);
        if (kind == null) {
            throw new IllegalArgumentException("no kind “" + name + "” among " + names());
        }
        return kind;
    }

    static Set<String> names() {
        return all().keySet();
    }

    Spread around(RationalNumber grams) {
        return new Spread(grams.multiply(less), grams.multiply(more), source);
    }

    /** Read on first use. */
    private static final class Table {
        static final Map<String, Kind> KINDS = Resources.read("kinds.yaml", Kind::read);
    }
}
