package org.misecue.claims;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Ingredient;
import org.misecue.recipe.TableFile;
import org.misecue.spoken.Words;

/**
 * A food that contradicts claims other than by an allergen: one row of {@code unsuited.csv}.
 *
 * @param claims the keys of what it is unsuited for
 * @param always whether every make is; otherwise some are
 * @param why as the end of "honey is …" or "beer …"
 */
record Unsuited(String name, Set<String> claims, boolean always, String why) {

    /** The rows for a food of the pantry or, where it is not known there, for the words of a line. */
    static List<Unsuited> of(String line, Optional<Ingredient> known, String claim) {
        Set<String> words = Words.content(line);
        return Table.ROWS.stream()
                .filter(row -> row.claims().contains(claim))
                .filter(row -> known.map(one -> one.name().equals(row.name()))
                        .orElseGet(() -> words.containsAll(Words.content(row.name()))))
                .toList();
    }

    private static final class Table {
        static final List<Unsuited> ROWS = TableFile.rows(Unsuited.class, "unsuited.csv").stream()
                .map(Unsuited::row)
                .toList();
    }

    private static Unsuited row(String line) {
        List<String> cells = List.of(line.split(";", -1));
        boolean always = cells.size() == 5 && cells.get(2).equals("contains");
        if (!always && !cells.get(2).equals("check")) {
            throw new IllegalStateException("unsuited.csv: expected “contains” or “check” in " + line);
        }
        return new Unsuited(cells.get(0), Set.copyOf(Denials.parts(cells.get(1))), always, cells.get(3));
    }
}
