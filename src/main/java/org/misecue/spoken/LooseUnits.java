package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** What takes the place of a unit: units told in another one, packs, and spoons of no stated size. */
final class LooseUnits {

    /** So many packs are not counted but a size. */
    static final RationalNumber MANY_PACKS = Rationals.of(40);

    private static final Set<String> HANDLED = Words.set(
            "draw drag run pull stick use used using with dip stand hold grab scrape get getting got dirty dirtying tap bang lick wet find fetch");

    private final WordStream words;
    private final OwnMeasures own;

    LooseUnits(WordStream words, OwnMeasures own) {
        this.words = words;
        this.own = own;
    }

    /** The amount that begins at {@code start}, where such a unit stands at {@code at}. */
    Optional<SpokenQuantity> at(int start, int at, Amount amount) {
        String word = words.text(at);
        boolean cut = UnitWords.isCutDessertspoon(words, at);
        Optional<SpokenQuantity> derived = UnitWords.derived(cut ? "dessertspoon" : word)
                .or(() -> own.one(word))
                .flatMap(one -> OwnMeasures.many(start, cut ? at + 2 : at + 1, amount, one));
        if (derived.isPresent()) {
            return derived;
        }
        if (QuantityWords.isPacking(word)) {
            return Optional.of(
                    isSize(amount)
                            ? SpokenQuantity.of(start, at, amount, Manner.BARE)
                            : SpokenQuantity.of(start, at + 1, amount, Manner.PACKED));
        }
        return UnitWords.isSpoon(word) && !isTool(start, at)
                ? Optional.of(SpokenQuantity.of(start, at + 1, amount, Manner.SPOONS))
                : Optional.empty();
    }

    /** "draw a spoon across the bottom": nothing is measured with it. */
    private boolean isTool(int start, int at) {
        return words.text(start).equals("a")
                && at == start + 1
                && HANDLED.contains(words.text(start - 1))
                && !words.text(at + 1).equals("of");
    }

    /** "a three thirty carton": nobody counts so many. */
    private boolean isSize(Amount amount) {
        return words.on(Mechanism.TAKEN_FROM)
                && amount.least()
                        .filter(value -> value.compareTo(MANY_PACKS) >= 0)
                        .isPresent();
    }
}
