package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** "One eighty for forty minutes": a temperature and a time side by side explain each other, without the oven's name. */
final class HeatAndTime {

    private static final int REACH = 3;
    /** "two forty with the lid on for twenty minutes". */
    private static final int FARTHEST = 7;

    private static final Set<String> JOINING = Set.of("at", "for");
    private static final Set<String> LOOSE = Set.of("the", "first", "about", "around", "roughly", "another");
    private static final Set<String> SMALL =
            Words.set("and they these it this that is are then hot give get take takes need needs about");
    private static final RationalNumber COOLEST = Rationals.of(100);

    private HeatAndTime() {}

    static boolean isHeatBesideTime(SpokenQuantity said, Hearing heard) {
        return isOvenLike(said) && beside(said, heard).anyMatch(HeatAndTime::isTime);
    }

    static boolean isTimeBesideHeat(SpokenQuantity said, Hearing heard) {
        return isTime(said) && beside(said, heard).anyMatch(HeatAndTime::isOvenLike);
    }

    private static Stream<SpokenQuantity> beside(SpokenQuantity said, Hearing heard) {
        Optional<SpokenQuantity> before =
                heard.quantityBefore(said.start()).filter(one -> joins(heard, one.end(), said.start()));
        Optional<SpokenQuantity> behind =
                heard.quantityFrom(said.end()).filter(one -> joins(heard, said.end(), one.start()));
        return heard.on(Mechanism.HEAT_AND_TIME) ? Stream.concat(before.stream(), behind.stream()) : Stream.empty();
    }

    /** The second of the two comes at once, or is joined by "at" or "for". */
    private static boolean joins(Hearing heard, int end, int start) {
        boolean told = isTold(heard, start);
        boolean near = start - end <= (told ? FARTHEST : REACH);
        return near && (told ? heard.namesIn(end, start).isEmpty() : onlySmall(heard, end, start));
    }

    /** "two twenty for the first ten minutes", "for about forty". */
    private static boolean isTold(Hearing heard, int start) {
        int at = start - 1;
        while (LOOSE.contains(heard.words.text(at)) && start - at < LOOSE.size()) {
            at--;
        }
        return JOINING.contains(heard.words.text(at));
    }

    private static boolean onlySmall(Hearing heard, int from, int to) {
        for (int at = from; at < to; at++) {
            if (!SMALL.contains(heard.words.text(at))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isTime(SpokenQuantity said) {
        return said.unit().map(Unit::dimension).equals(Optional.of(Dimension.DURATION));
    }

    private static boolean isOvenLike(SpokenQuantity said) {
        return (said.manner() == Manner.BARE || said.manner() == Manner.HEAT) && said.isAtLeast(COOLEST);
    }
}
