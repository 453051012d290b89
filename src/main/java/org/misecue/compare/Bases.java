package org.misecue.compare;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/** What was measured and can be pointed at: an ingredient, a pack, or the total of several things. */
final class Bases {

    private static final int BASE_REACH = 60;
    private static final int TOTAL_REACH = 40;

    /** Something measured, by a mention of a line or as a total of several. */
    record Base(int end, Quantity quantity, Set<Integer> lines) {}

    private final Hearing heard;
    private final Attacher attacher;
    private Optional<Base> total = Optional.empty();

    Bases(Hearing heard, Attacher attacher) {
        this.heard = heard;
        this.attacher = attacher;
    }

    /** Notes the total of several things. */
    void total(Base whole) {
        total = Optional.of(whole);
    }

    /** Shares without a base of their own are shares of what was measured last, from here on. */
    void shareOut(Pointer pointer) {
        total = total.or(() -> last(pointer.start()));
    }

    /** Whether something was shared out shortly before. */
    boolean isSharedOut(Pointer pointer) {
        return total.filter(base -> pointer.start() - base.end() <= TOTAL_REACH).isPresent();
    }

    boolean isTotal(Base base) {
        return total.filter(whole -> whole.equals(base)).isPresent();
    }

    /** A bare number that is the total's, said again to reckon with. */
    boolean isTotalAgain(SpokenQuantity said) {
        return said.manner() == Manner.BARE
                && total.filter(whole -> whole.quantity().amount().equals(said.amount()))
                        .filter(whole -> whole.lines().size() > 1 && said.start() - whole.end() <= TOTAL_REACH)
                        .isPresent();
    }

    /** What a pointer points at, if it was measured. */
    Optional<Base> of(Pointer pointer) {
        if (pointer.base().isPresent()) {
            Set<Integer> lines = pointer.base().get().lines();
            return total.filter(whole -> pointer.share() && lines.stream().anyMatch(whole.lines()::contains))
                    .map(whole -> new Base(whole.end(), whole.quantity(), Set.of()))
                    .or(() -> named(pointer.base().get()));
        }
        Optional<Base> pack = pack(pointer);
        if (pack.isPresent()) {
            return pack;
        }
        Optional<Base> whole = total.filter(base -> pointer.start() - base.end() <= TOTAL_REACH && pointer.share());
        Optional<Base> last = last(pointer.start());
        return whole.isPresent()
                        && last.map(base -> base.end() <= whole.get().end()).orElse(true)
                ? whole
                : whole.isPresent() && pointer.factor().compareTo(Rationals.ONE) < 0 && isPercent(pointer)
                        ? whole
                        : last;
    }

    /** "a two hundred gram block, and I'm using half of that". */
    Optional<Base> pack(Pointer pointer) {
        int lastEnd = attacher.mentions().last().map(Mention::end).orElse(0);
        return heard.packBefore(pointer.start())
                .filter(size -> pointer.share() && size.end() > lastEnd)
                .flatMap(size -> size.quantity().map(quantity -> new Base(size.end(), quantity, Set.of())));
    }

    private boolean isPercent(Pointer pointer) {
        return heard.words.normal(pointer.start(), pointer.end()).contains("percent")
                || heard.words.normal(pointer.start(), pointer.end()).contains("%");
    }

    /** What was measured last; eggs that were only counted between are no measure of anything. */
    private Optional<Base> last(int before) {
        return attacher.mentions()
                .lastMeasured()
                .or(attacher.mentions()::last)
                .filter(mention -> mention.end() <= before && before - mention.end() <= BASE_REACH)
                .map(mention -> new Base(
                        mention.end(),
                        attacher.mentions().committed(mention.line()).orElse(mention.quantity()),
                        Set.of(mention.line())));
    }

    private Optional<Base> named(NameHit name) {
        return name.lines().stream()
                .flatMap(line -> attacher.mentions().committed(line).stream()
                        .map(quantity -> new Base(name.start(), quantity, Set.of(line))))
                .filter(base -> base.quantity().unit().dimension() != Dimension.COUNT)
                .max(Comparator.comparingDouble(base -> attacher.scores()
                        .component(name.start(), base.lines().iterator().next())))
                .or(() -> name.lines().stream()
                        .flatMap(line -> attacher.weighed().of(line).stream()
                                .map(quantity -> new Base(name.start(), quantity, Set.of(line))))
                        .findFirst());
    }
}
