package org.misecue.episode;

import java.time.LocalDate;
import java.util.List;

/**
 * What went out to viewers on one day, as far as a correction needs it.
 *
 * @param on the day
 * @param who published it
 * @param anyway why it went out in spite of what was undecided; empty where nothing was
 * @param items each amount that was published, in the order of the recipe
 * @param contains the allergens that the text named
 */
public record Publication(LocalDate on, String who, String anyway, List<Item> items, List<String> contains) {

    public Publication {
        items = List.copyOf(items);
        contains = List.copyOf(contains);
    }

    /**
     * One published amount.
     *
     * @param about what it is an amount of, the same in every run: "cake: caster sugar", "oven (2)"
     * @param amount in words of the recipe's own measure: "175 g", "45–50 minutes"
     * @param text the whole line: "175 g unsalted butter, softened"
     */
    public record Item(String about, String amount, String text) {}
}
