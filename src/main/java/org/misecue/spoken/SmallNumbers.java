package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.misecue.quantity.Dimension;

/** Numbers under a hundred: "five", "seventeen", "twenty", "twenty five". */
final class SmallNumbers {

    /** How a number under a hundred was said: decides what may follow it. */
    enum Size {
        UNIT,
        TEEN,
        ROUND_TEN,
        TEN_AND_UNIT
    }

    /** A value and the index after its last word. */
    record Small(long value, int end, Size size) {}

    private static final Set<String> ZEROES = Set.of("zero", "nought");

    private final WordStream words;

    SmallNumbers(WordStream words) {
        this.words = words;
    }

    Optional<Small> at(int at) {
        String word = words.text(at);
        Integer unit = unit(word, at);
        if (unit != null) {
            return Optional.of(new Small(unit, at + 1, Size.UNIT));
        }
        Integer teen = NumberWords.TEENS.get(word);
        if (teen != null) {
            return Optional.of(new Small(teen, at + 1, Size.TEEN));
        }
        Integer ten = NumberWords.TENS.get(word);
        if (ten == null) {
            return Optional.empty();
        }
        Integer after = isReadOut(at + 1, ten) ? null : NumberWords.UNITS.get(words.text(at + 1));
        return Optional.of(
                after == null
                        ? new Small(ten, at + 1, Size.ROUND_TEN)
                        : new Small(ten + after, at + 2, Size.TEN_AND_UNIT));
    }

    /** "sixty, six zero", "sixty, six oh": the number again, figure by figure. */
    private boolean isReadOut(int at, int ten) {
        boolean again = Integer.valueOf(ten / 10).equals(NumberWords.UNITS.get(words.text(at)));
        Set<String> zeroes = again ? NumberWords.OHS : ZEROES;
        return words.on(Mechanism.HUNDREDS_LEFT_OUT) && zeroes.contains(words.text(at + 1));
    }

    /** Whether the digit at the index and the "oh" behind it tell the ten before them again. */
    boolean readsOutTen(int at) {
        Integer digit = NumberWords.UNITS.get(words.text(at));
        Integer ten = NumberWords.TENS.get(words.text(at - 1));
        return digit != null && ten != null && ten == 10 * digit && NumberWords.OHS.contains(words.text(at + 1));
    }

    /** "tree hundred": a digit may be misheard. */
    private @Nullable Integer unit(String word, int at) {
        return words.on(Mechanism.MISHEARD_NUMBERS)
                ? NumberWords.UNITS.getOrDefault(word, NumberWords.misheard(word, words.text(at + 1)))
                : NumberWords.UNITS.get(word);
    }

    /** Two digits after a hundred said in words: "one 25", "two hundred and 50". */
    Optional<Small> digits(int at) {
        return words.text(at).matches("[1-9]\\d")
                ? Optional.of(new Small(Long.parseLong(words.text(at)), at + 1, Size.TEN_AND_UNIT))
                : Optional.empty();
    }

    /** A single digit read out; null where the word is none. */
    @Nullable
    Integer digit(int at) {
        String word = words.text(at);
        return word.equals("zero") ? Integer.valueOf(0) : NumberWords.UNITS.get(word);
    }

    /**
     * "one eighty, two hundred", "one twenty, one forty": the digit behind a ten begins the next number; "three
     * seventy five, ten minutes" is a heat and a time.
     */
    boolean beginsAnother(int at) {
        String next = words.text(at + 1);
        boolean time = UnitWords.at(words, at + 2)
                .filter(unit -> unit.unit().dimension() == Dimension.DURATION)
                .isPresent();
        return !time && beginsNumber(next);
    }

    private static boolean beginsNumber(String next) {
        return next.equals("hundred") || NumberWords.TENS.containsKey(next) || NumberWords.TEENS.containsKey(next);
    }
}
