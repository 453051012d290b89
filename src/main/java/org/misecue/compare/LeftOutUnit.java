package org.misecue.compare;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** Units of time and heat that go on without being said again: "twenty five minutes, no, thirty", "and ten more". */
final class LeftOutUnit {

    private static final int REACH = 16;
    private static final int PURPOSE_REACH = 4;
    private static final int TURNED_REACH = 5;
    private static final Set<Kind> PURPOSES =
            Set.of(Kind.FOR_BAKING, Kind.FOR_CHILLING, Kind.FOR_PROVING, Kind.FOR_SIMMERING, Kind.FOR_RESTING);
    private static final int AHEAD_REACH = 4;
    private static final RationalNumber SHORTEST = Rationals.of(5);
    private static final int LONGEST = 120;
    private static final RationalNumber COOLEST = Rationals.of(80);
    private static final Set<String> TAKING = Set.of("took", "takes", "take", "needed", "needs", "got");

    private final Hearing heard;
    private final Repairs repairs;
    private final Map<Dimension, Last> last = new EnumMap<>(Dimension.class);

    private record Last(SpokenQuantity words, Unit unit) {}

    LeftOutUnit(Hearing heard) {
        this.heard = heard;
        this.repairs = new Repairs(heard);
    }

    /** Remembers a time or temperature that was said with its unit, or whose unit is clear. */
    void heard(SpokenQuantity words, Unit unit) {
        last.put(unit.dimension(), new Last(words, unit));
    }

    /** The unit of the time or temperature before a bare number that goes on with it. */
    Optional<Unit> unit(SpokenQuantity said) {
        if (said.manner() != Manner.BARE || said.isAside() || !heard.on(Mechanism.LEFT_OUT_UNITS)) {
            return Optional.empty();
        }
        if (isAhead(said) || isBaked(said)) {
            return Optional.of(Unit.MINUTE);
        }
        return last(said)
                .filter(one -> said.start() - one.words().end() <= REACH)
                .filter(one -> heard.sameSource(one.words().start(), said.start()))
                .filter(one -> goesOn(one.words(), said))
                .map(Last::unit)
                .filter(unit -> isUsual(unit, said))
                .map(unit -> unit == Unit.HOUR ? Unit.MINUTE : unit);
    }

    /** "for twenty, no, thirty, it's thirty minutes": the unit comes with the last of several tries. */
    private boolean isAhead(SpokenQuantity said) {
        SpokenQuantity one = said;
        while (one.manner() == Manner.BARE) {
            SpokenQuantity before = one;
            Optional<SpokenQuantity> next = heard.quantityFrom(before.end())
                    .filter(other -> other.start() - before.end() <= AHEAD_REACH)
                    .filter(other ->
                            other.amount().equals(before.amount()) || repairs.isRepaired(before.end(), other.start()));
            if (next.isEmpty()) {
                return false;
            }
            one = next.get();
        }
        boolean time = one.unit()
                .filter(unit -> unit.dimension() == Dimension.DURATION)
                .isPresent();
        return time && heard.namesIn(said.end(), one.start()).stream().noneMatch(name -> name.inRecipe());
    }

    /** "in the oven for forty". */
    private boolean isBaked(SpokenQuantity said) {
        return isForSomething(said)
                && said.isAtLeast(SHORTEST)
                && isUsual(Unit.MINUTE, said)
                && heard.namesIn(said.end(), said.end() + 3).isEmpty()
                && !heard.words.text(said.end()).equals("of");
    }

    /** "two hundred for another twenty" goes on with the minutes before. */
    private Optional<Last> last(SpokenQuantity said) {
        boolean heat = said.isAtLeast(COOLEST);
        if (isTurned(said) && last.containsKey(Dimension.TEMPERATURE)) {
            return Optional.ofNullable(last.get(Dimension.TEMPERATURE));
        }
        return last.values().stream()
                .filter(one -> heat || one.unit().dimension() != Dimension.TEMPERATURE)
                .max(Comparator.comparingInt(one -> one.words().start()));
    }

    private boolean goesOn(SpokenQuantity last, SpokenQuantity said) {
        boolean ingredient = heard.namesIn(last.end(), said.end() + 3).stream().anyMatch(name -> name.inRecipe());
        boolean more = heard.phrases.within(Kind.MORE_OF_IT, said.start() - 1, said.end() + 1);
        boolean takes = TAKING.contains(heard.words.text(said.start() - 1)) || isForSomething(said);
        boolean inAll = last.unit()
                        .filter(unit -> unit.dimension() == Dimension.DURATION)
                        .isPresent()
                && heard.phrases.within(Kind.TOTAL_AFTER, said.end(), said.end() + 1);
        return !ingredient
                && (more
                        || inAll
                        || isTurned(said)
                        || takes
                        || PassingTime.is(said, heard)
                        || repairs.isRepaired(last.end(), said.start()));
    }

    /** "then knock it back to two hundred". */
    private boolean isTurned(SpokenQuantity said) {
        return said.isAtLeast(COOLEST) && heard.phrases.within(Kind.TURNED, said.start() - TURNED_REACH, said.start());
    }

    /** "in the oven for forty". */
    private boolean isForSomething(SpokenQuantity said) {
        return heard.words.text(said.start() - 1).equals("for")
                && PURPOSES.stream()
                        .anyMatch(kind -> heard.phrases.within(kind, said.start() - PURPOSE_REACH, said.start()));
    }

    private static boolean isUsual(Unit unit, SpokenQuantity said) {
        boolean heat = unit.dimension() == Dimension.TEMPERATURE;
        boolean time = unit.dimension() == Dimension.DURATION
                && said.amount()
                        .least()
                        .filter(value -> value.compareTo(Rationals.of(LONGEST)) <= 0)
                        .isPresent();
        return heat || time;
    }
}
