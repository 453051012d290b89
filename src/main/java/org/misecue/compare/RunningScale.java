package org.misecue.compare;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/**
 * A scale that is never set back: "sugar, and we go from four hundred up to five fifty" tells a hundred and fifty grams of
 * sugar. Where it starts must have been said before, as an amount or as where the last thing stopped; so an oven that goes
 * up or a price that rises is none.
 */
final class RunningScale {

    private static final int REACH = 14;
    private static final int STARTED_REACH = 150;

    private static final Pattern STARTS =
            Pattern.compile(".*\\b(from|off|was|were|was at|was on|showing|shows|showed|reading|at)$");
    private static final Pattern CLIMBS = Pattern.compile(
            ".*\\b(up|goes|go|going|takes|take|brings|climbs|climb|stops|stop|now|until|till|then)\\b.*");
    private static final Pattern STOPS =
            Pattern.compile(".*\\b(to|at|is|says|reads|shows|hits|until|till|on|it's|for)$");
    private static final Pattern STOPS_ALONE = Pattern.compile(
            ".*\\b(takes|brings|gets|get|got) (us|it|me|her|that|the scale|the needle|the dial) (right )?up to$");
    private static final Pattern MOVES =
            Pattern.compile(".*\\b(takes|take|brings|bring|goes|go|going|climbs|moves) (it|us|me|her|up)? ?from$");

    private final Hearing heard;

    /** Where the numbers begin from which the scale went on. */
    private final Set<Integer> starts = new HashSet<>();

    /** What went in, by where the number begins at which the scale stopped. */
    private final Map<Integer, SpokenQuantity> added = new HashMap<>();

    RunningScale(Hearing heard) {
        this.heard = heard;
        if (heard.on(Mechanism.SCALES)) {
            heard.quantities.forEach(this::read);
        }
    }

    /** What went in, where the number is where the scale stopped. */
    Optional<SpokenQuantity> added(SpokenQuantity said) {
        return Optional.ofNullable(added.get(said.start()));
    }

    /** Whether the number only tells where the scale stood before. */
    boolean isStart(SpokenQuantity said) {
        return starts.contains(said.start());
    }

    private void read(SpokenQuantity said) {
        if (!isOnScale(said)) {
            return;
        }
        if (isRange(said)) {
            climb(said, said.amount().least(), said);
            return;
        }
        Optional<SpokenQuantity> first = heard.quantityBefore(said.start())
                .filter(before -> said.start() - before.end() <= REACH && isOnScale(before))
                .filter(before -> STARTS.matcher(before(before)).matches())
                .filter(before -> isClimb(before.end(), said.start()));
        if (first.isPresent()) {
            climb(said, first.get().amount().least(), first.get());
        } else if (STOPS_ALONE.matcher(before(said)).matches()) {
            lastOnScale(said)
                    .flatMap(last -> last.amount().most())
                    .ifPresent(from -> climb(said, Optional.of(from), said));
        }
    }

    /** "from two hundred to three fifty" is heard as one range. */
    private boolean isRange(SpokenQuantity said) {
        return !said.amount().least().equals(said.amount().most())
                && MOVES.matcher(before(said)).matches();
    }

    private boolean isClimb(int from, int to) {
        String between = heard.words.normal(from, to);
        return CLIMBS.matcher(between).matches() && STOPS.matcher(between).matches();
    }

    private String before(SpokenQuantity said) {
        return heard.words.normal(said.start() - 5, said.start());
    }

    private boolean isOnScale(SpokenQuantity said) {
        boolean weight = said.unit()
                .map(Unit::dimension)
                .filter(it -> it == Dimension.MASS)
                .isPresent();
        boolean told = said.aside().isEmpty() || said.isAside(Aside.Kind.NAMED) || said.isAside(Aside.Kind.LEVEL);
        return told && (weight || said.manner() == Manner.BARE);
    }

    private void climb(SpokenQuantity said, Optional<RationalNumber> from, SpokenQuantity first) {
        Optional<RationalNumber> to = said.amount().most();
        if (from.isEmpty() || to.isEmpty() || to.get().compareTo(from.get()) <= 0 || !isStarted(first, from.get())) {
            return;
        }
        if (!first.equals(said)) {
            starts.add(first.start());
        }
        Unit unit = said.unit().or(first::unit).orElse(Unit.GRAM);
        added.put(
                said.start(),
                new SpokenQuantity(
                        said.start(),
                        said.end(),
                        Amount.of(to.get().subtract(from.get())),
                        Optional.of(unit),
                        Manner.MEASURED,
                        Optional.empty()));
    }

    /** Whether the scale was there before: an amount alone, or where it stopped. */
    private boolean isStarted(SpokenQuantity first, RationalNumber value) {
        return heard.quantitiesIn(first.start() - STARTED_REACH, first.start()).stream()
                .filter(this::isOnScale)
                .anyMatch(said -> said.amount().most().equals(Optional.of(value)));
    }

    /** Where the scale stands: where it stopped last, or the first thing on it. */
    private Optional<SpokenQuantity> lastOnScale(SpokenQuantity said) {
        List<SpokenQuantity> before = heard.quantitiesIn(said.start() - STARTED_REACH, said.start()).stream()
                .filter(this::isOnScale)
                .toList();
        Optional<SpokenQuantity> stopped =
                before.stream().filter(one -> added.containsKey(one.start())).reduce((one, other) -> other);
        return stopped.or(() ->
                before.stream().filter(one -> one.manner() == Manner.MEASURED).reduce((one, other) -> other));
    }
}
