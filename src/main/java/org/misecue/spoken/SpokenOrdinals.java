package org.misecue.spoken;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Cups and spoons that are counted by ordinals while they go in: "there's your first cup … and your second cup" is two of
 * them. A second that no first goes before counts nothing.
 */
public final class SpokenOrdinals {

    private static final Map<String, Integer> VALUES = Map.ofEntries(
            entry("second", 2), entry("third", 3), entry("fourth", 4), entry("fifth", 5), entry("sixth", 6));
    private static final Set<String> FIRST = Set.of("first", "one", "1", "a");
    private static final Set<String> OWNERS = Words.set("the your my our a and that this");
    private static final int FIRST_REACH = 70;

    private final WordStream words;
    private final OwnMeasures own;

    SpokenOrdinals(WordStream words, OwnMeasures own) {
        this.words = words;
        this.own = own;
    }

    /** Whether a word is an ordinal that may count what goes in. */
    public static boolean isOne(String word) {
        return VALUES.containsKey(word);
    }

    /** The number that an ordinal counts to, from 2 to 6. */
    static Optional<RationalNumber> value(String word) {
        return Optional.ofNullable(VALUES.get(word)).map(Rationals::of);
    }

    /** "your second cup" where it begins at the index. */
    Optional<SpokenQuantity> at(int start) {
        String ordinal = words.text(start + 1);
        if (!VALUES.containsKey(ordinal) || !OWNERS.contains(words.text(start)) || !words.on(Mechanism.COUNTED_UP)) {
            return Optional.empty();
        }
        int value = VALUES.getOrDefault(ordinal, 0);
        return own.one(words.text(start + 2))
                .filter(one -> isBegun(start, words.text(start + 2), value))
                .flatMap(one -> OwnMeasures.many(start, start + 3, Amount.of(value), one))
                .or(() -> ofUnit(start, value));
    }

    private Optional<SpokenQuantity> ofUnit(int start, int value) {
        return UnitWords.at(words, start + 2)
                .filter(unit -> unit.unit().dimension() == Dimension.VOLUME)
                .filter(unit -> isBegun(start, unit.unit().name(), value))
                .map(unit -> SpokenQuantity.measured(start, unit.end(), Amount.of(value), unit.unit()));
    }

    /** Whether the one before it, or the first, was counted with the same unit. */
    private boolean isBegun(int start, String unit, int value) {
        for (int at = start - 1; at > start - FIRST_REACH; at--) {
            String word = words.text(at);
            boolean before = VALUES.getOrDefault(word, 0) == value - 1 || (value == 2 && FIRST.contains(word));
            if (before && (words.text(at + 1).equals(unit) || isUnit(at + 1, unit))) {
                return true;
            }
        }
        return false;
    }

    private boolean isUnit(int at, String unit) {
        return UnitWords.at(words, at)
                .filter(heard -> heard.unit().name().equals(unit))
                .isPresent();
    }
}
