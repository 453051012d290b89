package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import tech.units.indriya.function.RationalNumber;

/**
 * How far from what is written an amount may be and still be a slip of the tongue or another mind: half and double are
 * often said, ten times as much hardly ever. What is farther off was said of something else: the tin, the bag, the clock.
 * Of 170 amounts of our narrations that were said otherwise than written, none was beyond these bounds.
 */
final class SlipOfTongue {

    private static final RationalNumber LEAST_BARE = Rationals.of(3, 10);
    private static final RationalNumber MOST_BARE = Rationals.of(13, 5);
    private static final RationalNumber LEAST = Rationals.of(1, 5);
    private static final RationalNumber LARGEST_STEP = Rationals.of(2, 5);
    /** Three teaspoons to the tablespoon. */
    private static final RationalNumber MOST = Rationals.of(16, 5);

    private final IngredientLine written;
    private final Household household;

    SlipOfTongue(IngredientLine written, Household household) {
        this.written = written;
        this.household = household;
    }

    /** Those that are not too much for the line, be they all of it or a part. */
    List<Mention> notTooMuch(List<Mention> mentions) {
        return mentions.stream()
                .filter(mention -> !isTooMuch(mention.quantity(), mention.assumedUnit()))
                .toList();
    }

    /** Those that may be all of it. */
    List<Mention> likely(List<Mention> mentions) {
        return mentions.stream()
                .filter(mention -> isLikely(mention.quantity(), mention.assumedUnit()))
                .toList();
    }

    /** Without what was said on the way to all of it; what is said behind it may come on top. */
    List<Ledger.Entry> withoutSteps(List<Ledger.Entry> standing) {
        int last = standing.size() - 1;
        while (!isLikely(standing.get(last))) {
            last--;
        }
        int whole = last;
        return IntStream.range(0, standing.size())
                .filter(at -> at >= whole || !isStep(standing.get(at)))
                .mapToObj(standing::get)
                .toList();
    }

    private boolean isStep(Ledger.Entry entry) {
        return !isLikely(entry) || (isBare(entry) && isBelow(entry.quantity(), LARGEST_STEP));
    }

    boolean isLikely(Ledger.Entry entry) {
        return isLikely(entry.quantity(), isBare(entry));
    }

    private static boolean isBare(Ledger.Entry entry) {
        return entry.mentions().stream().allMatch(Mention::assumedUnit);
    }

    private boolean isLikely(Quantity said, boolean bare) {
        return !isTooMuch(said, bare) && !isTooLittle(said, bare);
    }

    private boolean isTooMuch(Quantity said, boolean bare) {
        return figure(said)
                .filter(figure -> least(said)
                                .compareTo(figure.mostInBase(household)
                                        .orElse(least(figure))
                                        .multiply(bare ? MOST_BARE : MOST))
                        > 0)
                .isPresent();
    }

    /** A pinch is tried, or taken out again, of what is weighed. */
    boolean isNoPinchTried(Mention mention) {
        return mention.quantity().unit() != Unit.PINCH
                || written.quantity()
                        .filter(figure -> figure.dimension() == Dimension.MASS)
                        .isEmpty();
    }

    private boolean isTooLittle(Quantity said, boolean bare) {
        return isBelow(said, bare ? LEAST_BARE : LEAST);
    }

    private boolean isBelow(Quantity said, RationalNumber share) {
        return figure(said)
                .filter(figure -> least(said).compareTo(least(figure).multiply(share)) < 0)
                .isPresent();
    }

    /** What it is to be held against; nothing where only the pantry could tell, or where no amount is written. */
    private Optional<Quantity> figure(Quantity said) {
        return written.quantity()
                .map(any -> Fit.nearestWritten(said, written))
                .filter(figure -> figure.dimension() == said.dimension());
    }

    private RationalNumber least(Quantity quantity) {
        return quantity.leastInBase(household).orElse(Rationals.ZERO);
    }
}
