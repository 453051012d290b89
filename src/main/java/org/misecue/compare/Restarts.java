package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Amounts begun again: by a speaker who had not finished, or by the scales while something is poured. */
final class Restarts {

    private static final int REACH = 5;
    private static final int SCALE_REACH = 24;
    private static final int SPOON_REACH = 5;
    private static final RationalNumber SMALLEST_ON_SCALES = Rationals.of(20);

    private static final Set<String> FIGURES = Words.set("zero oh nought one two three four five six seven eight nine");

    private final Hearing heard;

    Restarts(Hearing heard) {
        this.heard = heard;
    }

    /** How the amount is only another one over again, if it is. */
    Optional<String> repeats(SpokenQuantity said) {
        if (!heard.on(Mechanism.RESTART)) {
            return Optional.empty();
        }
        return isBegunAnew(said) || isSpoonsToldAgain(said)
                ? Optional.of("begun anew right behind")
                : isReadAgain(said) ? Optional.of("the number before, read out again") : Optional.empty();
    }

    /** "it's a quarter, a quarter of a teaspoon": the measure comes with the last of several tries. */
    private boolean isBegunAnew(SpokenQuantity said) {
        SpokenQuantity next = said;
        while (next.manner() == Manner.SHARE) {
            int end = next.end();
            Optional<SpokenQuantity> behind = heard.quantityFrom(end).filter(other -> other.start() == end);
            if (behind.isEmpty()) {
                return false;
            }
            next = behind.get();
        }
        return !next.equals(said) && next.manner() == Manner.MEASURED;
    }

    /** "three spoons, three teaspoons": which spoons they are comes with the second. */
    private boolean isSpoonsToldAgain(SpokenQuantity said) {
        return said.manner() == Manner.SPOONS
                && heard.quantityFrom(said.end())
                        .filter(next -> next.start() - said.end() <= SPOON_REACH && next.manner() == Manner.MEASURED)
                        .filter(next -> next.unit()
                                .filter(Restatements.SPOONS::contains)
                                .isPresent())
                        .filter(next -> next.amount().equals(said.amount()))
                        .isPresent();
    }

    /** "a hundred and fifty, five zero": the end of the number, figure by figure, so that nobody mishears it. */
    private boolean isReadAgain(SpokenQuantity said) {
        boolean figures = said.manner() == Manner.BARE
                && said.end() - said.start() > 1
                && IntStream.range(said.start(), said.end()).allMatch(at -> FIGURES.contains(heard.words.text(at)));
        return figures
                && heard.quantityBefore(said.start())
                        .filter(before -> said.start() - before.end() <= 1 && before.isAtLeast(Rationals.of(100)))
                        .filter(before -> text(before).endsWith(text(said)))
                        .isPresent();
    }

    private static String text(SpokenQuantity said) {
        return said.amount().least().map(RationalNumber::toString).orElse("-");
    }

    /** "a hundred and, a hundred and fifty grams": begun again, with the unit this time. */
    boolean restarts(Further amount) {
        return heard.on(Mechanism.RESTART)
                && amount.said().manner() == Manner.MEASURED
                && isBegunAgain(amount.said(), amount.last());
    }

    /** "two twenty six, take a bit off, two twenty": what the scales say last is what goes in. */
    boolean isReadOff(SpokenQuantity said, Mention last) {
        boolean climbing = said.manner() == Manner.BARE && isBegunAgain(said, last);
        return heard.on(Mechanism.SCALES)
                && said.start() - last.end() <= SCALE_REACH
                && said.isAtLeast(SMALLEST_ON_SCALES)
                && (climbing || heard.phrases.within(Kind.ON_THE_SCALES, last.end(), said.start()));
    }

    /** An amount without a unit and at once another, nothing named between them. */
    private boolean isBegunAgain(SpokenQuantity said, Mention last) {
        return last.assumedUnit()
                && !last.quantity().amount().equals(said.amount())
                && said.start() - last.end() <= REACH
                && heard.namesIn(last.end(), said.start()).isEmpty();
    }
}
