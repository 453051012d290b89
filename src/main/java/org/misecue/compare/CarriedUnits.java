package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** The unit that a bare number takes from what was said before it, where it takes one at all. */
final class CarriedUnits {

    private static final int SAME_LINE_UNIT_REACH = 60;
    private static final int OTHER_UNIT_REACH = 10;
    /** "a kilo, no, seven fifty": nobody counts so many kilos or cups. */
    private static final RationalNumber MANY = Rationals.of(30);

    private static final Set<Unit> SMALL_UNITS = Set.of(Unit.GRAM, Unit.MILLILITRE, Unit.EACH);

    private final Hearing heard;
    private final Mentions mentions;

    CarriedUnits(Hearing heard, Mentions mentions) {
        this.heard = heard;
        this.mentions = mentions;
    }

    /** The unit that a bare number goes on with: "a teaspoon now … and another two", "two teaspoons? One is plenty". */
    Optional<Unit> of(SpokenQuantity said, int line) {
        if (said.manner() != Manner.BARE || !heard.on(Mechanism.CARRIED_UNITS)) {
            return Optional.empty();
        }
        boolean few = said.isBelow(Rationals.of(10));
        boolean many = said.isAtLeast(MANY);
        Optional<Mention> last = mentions.last(line)
                .filter(mention ->
                        !many || SMALL_UNITS.contains(mention.quantity().unit()))
                .filter(mention -> !few
                        || (mention.quantity().unit() != Unit.GRAM
                                && mention.quantity().unit() != Unit.MILLILITRE))
                .filter(mention -> said.start() - mention.end() <= SAME_LINE_UNIT_REACH)
                .filter(mention -> mention.end() <= said.start());
        if (last.isPresent()) {
            return last.map(mention -> mention.quantity().unit());
        }
        return heard.quantityBefore(said.start())
                .filter(before -> said.start() - before.end() <= OTHER_UNIT_REACH)
                .flatMap(SpokenQuantity::unit)
                .filter(unit -> heard.lines
                        .get(line)
                        .quantity()
                        .filter(written -> written.dimension() == unit.dimension()
                                && unit.dimension() == Dimension.VOLUME
                                && unit != Unit.MILLILITRE)
                        .isPresent());
    }
}
