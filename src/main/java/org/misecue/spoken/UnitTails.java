package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** What may follow the unit: "a teaspoon and a half", "one pound four ounces", "an hour and twenty". */
final class UnitTails {

    private static final Set<String> POINTERS =
            Words.set("the this that these those it them a an one my our your each another what");

    private static final Set<String> THESE = Set.of("that", "those", "these", "them", "it");
    private static final Set<String> OWNERS = Set.of("the", "my", "your", "our");
    private static final Set<String> AS_MUCH = Words.set("amount much many weight quantity of again");

    private final WordStream words;
    private final NumberGrammar numbers;

    UnitTails(WordStream words, NumberGrammar numbers) {
        this.words = words;
        this.numbers = numbers;
    }

    /** The amount with its unit, and with what follows of it. */
    SpokenQuantity with(int start, Amount amount, UnitWords.Heard unit) {
        boolean may = amount instanceof Amount.Exact && words.on(Mechanism.UNIT_TAILS);
        int next = words.text(unit.end()).equals("and") ? unit.end() + 1 : unit.end();
        return (may ? numbers.at(next) : Optional.<SpokenNumber>empty())
                .filter(more -> more.amount() instanceof Amount.Exact)
                .flatMap(more -> half(start, amount, unit, more).or(() -> smallerUnit(start, amount, unit, more)))
                .orElseGet(() -> SpokenQuantity.measured(start, unit.end(), amount, unit.unit()));
    }

    private static RationalNumber value(Amount amount) {
        return amount.least().orElse(Rationals.ZERO);
    }

    /** "a teaspoon and a half". */
    private Optional<SpokenQuantity> half(int start, Amount amount, UnitWords.Heard unit, SpokenNumber more) {
        boolean ofTheSame = more.start() > unit.end()
                && more.fraction()
                && UnitWords.at(words, more.end()).isEmpty()
                && !sharesOut(more);
        RationalNumber total = value(amount).add(value(more.amount()));
        return ofTheSame
                ? Optional.of(SpokenQuantity.measured(start, more.end(), Amount.of(total), unit.unit()))
                : Optional.empty();
    }

    /** "a spoon and half of the milk" is two amounts; "a kilo and a half of apples" and "a cup and a half of those" are one. */
    private boolean sharesOut(SpokenNumber more) {
        int at = more.end();
        return words.text(at).equals("a")
                || (words.text(at).equals("that") && !isArticled(more)) // "two hundred mils, and half that of milk"
                || (words.text(at).equals("of") && POINTERS.contains(words.text(at + 1)) && !isOfTheSame(more));
    }

    private boolean isArticled(SpokenNumber more) {
        return words.text(more.start()).equals("a");
    }

    /** "a cup and a half of those", "a cup and a quarter of the sugar". */
    private boolean isOfTheSame(SpokenNumber more) {
        if (isArticled(more) && OWNERS.contains(words.text(more.end() + 1))) {
            return true;
        }
        return words.normal(more.start(), more.end()).equals("a half")
                && THESE.contains(words.text(more.end() + 1))
                && !AS_MUCH.contains(words.text(more.end() + 2));
    }

    /** "one pound four ounces", "an hour and twenty minutes", "an hour and twenty". */
    private Optional<SpokenQuantity> smallerUnit(int start, Amount amount, UnitWords.Heard unit, SpokenNumber more) {
        Optional<UnitWords.Heard> second = UnitWords.at(words, more.end());
        if (second.isPresent()) {
            return second.filter(smaller -> isPair(unit.unit(), smaller.unit()))
                    .filter(smaller -> !isSameAgain(amount, unit.unit(), more, smaller.unit()))
                    .map(smaller -> sum(start, smaller.end(), amount, unit.unit(), more, smaller.unit()));
        }
        return isMinutes(unit, more)
                ? Optional.of(sum(start, more.end(), amount, unit.unit(), more, Unit.MINUTE))
                : Optional.empty();
    }

    /** "half an hour, thirty minutes". */
    private static boolean isSameAgain(Amount amount, Unit unit, SpokenNumber more, Unit smaller) {
        return unit.toBase(value(amount), Household.METRIC)
                .equals(smaller.toBase(value(more.amount()), Household.METRIC));
    }

    private static boolean isPair(Unit unit, Unit smaller) {
        return (unit == Unit.POUND && smaller == Unit.OUNCE) || (unit == Unit.HOUR && smaller == Unit.MINUTE);
    }

    /** "an hour and twenty". */
    private boolean isMinutes(UnitWords.Heard unit, SpokenNumber more) {
        RationalNumber tail = value(more.amount());
        return unit.unit() == Unit.HOUR
                && words.text(unit.end()).equals("and")
                && tail.compareTo(Rationals.of(60)) < 0
                && tail.compareTo(Rationals.of(5)) >= 0;
    }

    private static SpokenQuantity sum(int start, int end, Amount amount, Unit unit, SpokenNumber more, Unit smaller) {
        RationalNumber inBase = unit.toBase(value(amount), Household.METRIC)
                .add(smaller.toBase(value(more.amount()), Household.METRIC));
        return SpokenQuantity.measured(start, end, Amount.of(smaller.fromBase(inBase, Household.METRIC)), smaller);
    }
}
