package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** Counts reckoned up aloud: "four by four, sixteen", "six and six and then six so eighteen". */
final class Tally {

    private static final int REACH = 14;

    private static final int STEP = 10;
    private static final int PAIRED_REACH = 18;

    private static final Set<String> PAIRED = Set.of("paired", "pairs", "sandwiched", "together", "joined", "filled");

    private final Hearing heard;

    Tally(Hearing heard) {
        this.heard = heard;
    }

    /** Whether the numbers right before multiply or add up to this one. */
    boolean isTotal(SpokenQuantity said) {
        Optional<SpokenQuantity> last = before(said, said);
        Optional<SpokenQuantity> first = last.flatMap(one -> before(one, said));
        if (last.filter(one -> isHalf(one, said)).isPresent()) {
            return true;
        }
        if (first.isEmpty()) {
            return false;
        }
        RationalNumber total = value(said);
        RationalNumber product = value(first.get()).multiply(value(last.orElseThrow()));
        return (isMany(first.get()) && isMany(last.orElseThrow()) && total.equals(product))
                || isSum(total, last.orElseThrow(), said);
    }

    /** "each half into five, so that's ten". */
    private boolean isHalf(SpokenQuantity part, SpokenQuantity total) {
        return heard.words.normal(part.start() - 4, part.start()).contains("each half")
                && value(part).multiply(Rationals.of(2)).equals(value(total));
    }

    /** "forty of them, so once they're paired up that's twenty". */
    boolean isPaired(SpokenQuantity total) {
        return heard.quantityBefore(total.start())
                .filter(halves -> halves.manner() == Manner.BARE && total.start() - halves.end() <= PAIRED_REACH)
                .filter(halves -> heard.words.saysAny(PAIRED, halves.end(), total.start()))
                .filter(halves -> value(total).multiply(Rationals.of(2)).equals(value(halves)))
                .isPresent();
    }

    private boolean isSum(RationalNumber total, SpokenQuantity last, SpokenQuantity said) {
        RationalNumber sum = value(last);
        Optional<SpokenQuantity> more = before(last, said);
        while (more.isPresent() && sum.compareTo(total) < 0) {
            sum = sum.add(value(more.get()));
            if (sum.equals(total)) {
                return true;
            }
            more = before(more.get(), said);
        }
        return false;
    }

    /** Whether the total is counted on from this number: "so thirty in the tin, and three tins, ninety". */
    boolean isPartOf(SpokenQuantity part, SpokenQuantity total) {
        return isTotal(total)
                && total.start() - part.end() <= REACH
                && value(part).compareTo(value(total)) < 0;
    }

    private Optional<SpokenQuantity> before(SpokenQuantity one, SpokenQuantity total) {
        return heard.quantityBefore(one.start())
                .filter(other -> other.manner() == Manner.BARE || other.manner() == Manner.PACKED)
                .filter(other -> total.start() - other.start() <= REACH && one.start() - other.end() <= STEP)
                .filter(other -> heard.sameSource(other.start(), total.start()));
    }

    private static boolean isMany(SpokenQuantity said) {
        return value(said).compareTo(Rationals.ONE) > 0;
    }

    private static RationalNumber value(SpokenQuantity said) {
        return said.amount().least().orElse(Rationals.ZERO);
    }
}
