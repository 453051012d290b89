package org.misecue.compare;

import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** Amounts begun again: by a speaker who had not finished, or by the scales while something is poured. */
final class Restarts {

    private static final int REACH = 5;
    private static final int SCALE_REACH = 24;
    private static final RationalNumber SMALLEST_ON_SCALES = Rationals.of(20);

    private final Hearing heard;

    Restarts(Hearing heard) {
        this.heard = heard;
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
