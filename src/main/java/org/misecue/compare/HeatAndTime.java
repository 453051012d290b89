package org.misecue.compare;

import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** "One eighty for forty minutes": a temperature and a time side by side explain each other, without the oven's name. */
final class HeatAndTime {

    /** "forty minutes in there at one eighty". */
    private static final int REACH = 3;

    private static final RationalNumber COOLEST = Rationals.of(100);

    private HeatAndTime() {}

    static boolean isHeatBesideTime(SpokenQuantity said, Hearing heard) {
        return isOvenLike(said) && beside(said, heard).anyMatch(HeatAndTime::isTime);
    }

    static boolean isTimeBesideHeat(SpokenQuantity said, Hearing heard) {
        return isTime(said) && beside(said, heard).anyMatch(HeatAndTime::isOvenLike);
    }

    private static Stream<SpokenQuantity> beside(SpokenQuantity said, Hearing heard) {
        Optional<SpokenQuantity> before = heard.quantityBefore(said.start())
                .filter(one -> said.start() - one.end() <= REACH && joins(heard, said.start()));
        Optional<SpokenQuantity> behind = heard.quantityFrom(said.end())
                .filter(one -> one.start() - said.end() <= REACH && joins(heard, one.start()));
        return Stream.concat(before.stream(), behind.stream());
    }

    /** The second of the two is joined by "at" or "for". */
    private static boolean joins(Hearing heard, int start) {
        String before = heard.words.text(start - 1);
        return before.equals("at") || before.equals("for");
    }

    private static boolean isTime(SpokenQuantity said) {
        return said.unit().map(Unit::dimension).equals(Optional.of(Dimension.DURATION));
    }

    private static boolean isOvenLike(SpokenQuantity said) {
        return (said.manner() == Manner.BARE || said.manner() == Manner.HEAT) && said.isAtLeast(COOLEST);
    }
}
