package org.misecue.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/**
 * Spoons and cups counted aloud while they go in: "tablespoons, so one, two, three … there's four, and there's your fifth"
 * are five. And those of which only the number is told: "by the teaspoon, roughly one".
 */
final class CountedUnits {

    private static final int COUNTED_REACH = 9;
    private static final int BY_REACH = 7;
    private static final int GOES_ON = 30;
    private static final Set<String> OWNERS = Set.of("your", "the", "my", "our");
    private static final RationalNumber MOST = Rationals.of(12);

    private final WordStream words;
    private final List<SpokenQuantity> heard;
    private final Places<SpokenQuantity> places;

    private CountedUnits(WordStream words, List<SpokenQuantity> heard) {
        this.words = words;
        this.heard = heard;
        this.places = Places.ofQuantities(heard);
    }

    /** All that was heard, with what was counted in its unit. */
    static List<SpokenQuantity> in(WordStream words, List<SpokenQuantity> heard) {
        return words.on(Mechanism.COUNTING_ALOUD) ? new CountedUnits(words, heard).counted() : heard;
    }

    private List<SpokenQuantity> counted() {
        List<SpokenQuantity> all = new ArrayList<>();
        int done = 0;
        for (SpokenQuantity said : heard) {
            if (said.start() < done) {
                continue;
            }
            Optional<SpokenQuantity> last = one(said)
                    .map(one -> unit(one, COUNTED_REACH, this::isCounted).map(unit -> last(one, unit)))
                    .orElseGet(() -> byUnit(said));
            last.ifPresent(all::add);
            if (last.isEmpty()) {
                all.add(said);
            }
            done = last.map(SpokenQuantity::end).orElse(done);
        }
        return List.copyOf(all);
    }

    /** Where the count begins that the number belongs to: the one of "one, two", which is no number of its own. */
    private Optional<Integer> one(SpokenQuantity said) {
        Optional<RationalNumber> value = said.amount().least();
        if (!said.isAside(Aside.Kind.COUNT)) {
            return Optional.empty();
        }
        if (value.equals(Optional.of(Rationals.ONE))) {
            return Optional.of(said.start());
        }
        return value.filter(Rationals.of(2)::equals)
                .map(two -> said.start() - 1)
                .filter(at -> words.text(at).equals("one"));
    }

    /** "by the teaspoon with those, one". */
    private Optional<SpokenQuantity> byUnit(SpokenQuantity said) {
        boolean few = said.manner() == Manner.BARE && !said.isAside() && said.isBelow(MOST);
        return few
                ? unit(said.start(), BY_REACH, this::isByThe)
                        .map(unit -> SpokenQuantity.measured(said.start(), said.end(), said.amount(), unit))
                : Optional.empty();
    }

    /** The unit that was named last and is told in such a way, with no other amount between. */
    private Optional<Unit> unit(int until, int reach, IntPredicate isTold) {
        for (int at = until - 1; at >= until - reach && !isTaken(at); at--) {
            Optional<Unit> unit = isTold.test(at) ? measure(at) : Optional.empty();
            if (unit.isPresent()) {
                return unit;
            }
        }
        return Optional.empty();
    }

    private boolean isByThe(int at) {
        return words.normal(at - 2, at).equals("by the");
    }

    /** "tablespoons", "by the cup". */
    private boolean isCounted(int at) {
        return words.text(at).endsWith("s") || isByThe(at);
    }

    private Optional<Unit> measure(int at) {
        return UnitWords.at(words, at)
                .filter(found -> found.unit().dimension() == Dimension.VOLUME)
                .map(found -> found.unit());
    }

    private boolean isTaken(int at) {
        return places.before(at + 1).filter(said -> at < said.end()).isPresent();
    }

    /** The last number of the count, with all of it as its amount. */
    private SpokenQuantity last(int one, Unit unit) {
        RationalNumber count = Rationals.ONE;
        int start = one;
        int end = one + 1;
        for (int at = end; at < Math.min(words.size(), end + GOES_ON); at++) {
            Optional<Counted> next = counted(at, count.add(Rationals.ONE));
            if (next.isPresent()) {
                count = next.get().value();
                start = at;
                end = next.get().end();
                at = end - 1;
            }
        }
        return SpokenQuantity.measured(start, end, Amount.of(count), unit);
    }

    /** A number of the count. */
    private record Counted(RationalNumber value, int end) {}

    /** The next number of the count, or the next two, which are heard as one range: "two, three". */
    private Optional<Counted> counted(int at, RationalNumber next) {
        boolean ordinal = OWNERS.contains(words.text(at - 1))
                && SpokenOrdinals.value(words.text(at)).filter(next::equals).isPresent();
        return ordinal
                ? Optional.of(new Counted(next, at + 1))
                : places.at(at)
                        .filter(said -> said.manner() == Manner.BARE)
                        .filter(said -> said.amount().least().equals(Optional.of(next)))
                        .map(said -> new Counted(said.amount().most().orElse(next), said.end()));
    }
}
