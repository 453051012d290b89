package org.misecue.prep;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;

/** What an ingredient is like to handle, told from the last words of its name by the table {@code natures.csv}. */
enum Nature {
    /** May share a bowl with other dry things: flour, raising agent, salt, spice, cocoa. */
    DRY,
    LIQUID,
    EGG,
    /** Everything else: fats, sugars, fruit, and yeast, which is kept apart from salt. */
    SOLID;

    static Nature of(String ingredient, Quantity quantity) {
        String name = singular(ingredient);
        if (name.startsWith("juice of ")) {
            return LIQUID;
        }
        for (String tail = name; !tail.isEmpty(); tail = tail.substring(tail.indexOf(' ') + 1)) {
            Nature nature = Table.ROWS.get(tail);
            if (nature != null) {
                return nature;
            }
            if (tail.indexOf(' ') < 0) {
                break;
            }
        }
        Unit unit = quantity.unit();
        return unit == Unit.MILLILITRE || unit == Unit.LITRE || unit == Unit.FLUID_OUNCE || unit == Unit.PINT
                ? LIQUID
                : SOLID;
    }

    /** Lower case, with the plural ending of the last word taken off where it is a plain one. */
    private static String singular(String name) {
        String lower = name.toLowerCase(Locale.ROOT).strip();
        return lower.endsWith("s") && !lower.endsWith("ss") ? lower.substring(0, lower.length() - 1) : lower;
    }

    /** Read on first use. */
    private static final class Table {
        static final Map<String, Nature> ROWS = read();

        private static Map<String, Nature> read() {
            Map<String, Nature> rows = new HashMap<>();
            try (InputStream in = Objects.requireNonNull(Nature.class.getResourceAsStream("natures.csv"));
                    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                for (String line :
                        lines.lines().filter(text -> !text.startsWith("#")).toList()) {
                    List<String> cells = List.of(line.split(","));
                    Nature nature = valueOf(cells.get(0).toUpperCase(Locale.ROOT));
                    cells.subList(1, cells.size()).forEach(name -> rows.put(singular(name), nature));
                }
            } catch (IOException e) {
                throw new UncheckedIOException("natures.csv in the program could not be read", e);
            }
            return Map.copyOf(rows);
        }
    }
}
