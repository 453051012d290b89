package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Which written tin a spoken size is about: a length beside a tin, and a weight where the tin is written by weight. */
final class TinMatch {

    private static final double TELLING = 0.2;
    private static final int NAMED_REACH = 10;
    /** Nobody misreads a tin by more: an inch beside a tin is a gap or a thickness. */
    private static final double FARTHEST = 2.5;

    /** With nothing else to be the length of, tins being talked of, and about so long. */
    private static final double NEAR = 1.4;

    /** Centimetres are never taken for inches: those are two and a half times as long. */
    private static final double ONE_SIDE = 1.6;

    private static final int TIN_BEHIND = 3;
    private static final int TALK = 30;

    private static final RationalNumber HUNDRED = Rationals.of(100);
    private static final Set<Dimension> SIZES = Set.of(Dimension.LENGTH, Dimension.MASS, Dimension.VOLUME);

    private static final Set<String> HOLES = Set.of("hole", "holes", "cup", "well");

    private final Hearing heard;
    private final Surroundings around;
    private final List<Setting> tins;

    TinMatch(Hearing heard, Surroundings around, List<Setting> tins) {
        this.heard = heard;
        this.around = around;
        this.tins = tins;
    }

    /** A pound is a size only where it stands right before the tin: "a two pound loaf tin". */
    boolean isByWeight(SpokenQuantity said) {
        return said.quantity()
                .filter(size -> size.dimension() != Dimension.LENGTH && SIZES.contains(size.dimension()))
                .filter(size -> tins.stream().anyMatch(tin -> figures(tin, size.dimension())))
                .filter(size -> heard.phrases.endAt(Kind.OF_A_TIN, said.end()).isPresent())
                .isPresent();
    }

    /** "a twelve hole one". */
    Optional<SpokenQuantity> byHoles(SpokenQuantity said) {
        return said.manner() == Manner.BARE && HOLES.contains(heard.words.text(said.end()))
                ? Optional.of(in(Unit.EACH, said))
                : Optional.empty();
    }

    private static SpokenQuantity in(Unit unit, SpokenQuantity said) {
        return new SpokenQuantity(
                said.start(), said.end(), said.amount(), Optional.of(unit), Manner.MEASURED, Optional.empty());
    }

    /** "the nine by thirteen": the first side, in the unit that makes a tin of it. */
    Optional<SpokenQuantity> bySides(SpokenQuantity said) {
        boolean sides = said.manner() == Manner.BARE
                && heard.words.text(said.end()).equals("by")
                && heard.quantityFrom(said.end() + 1)
                        .filter(other -> other.start() == said.end() + 1
                                && other.quantity().isEmpty())
                        .isPresent()
                && around.weight(said, Kind.OF_A_TIN) >= TELLING;
        return sides
                ? tins.stream()
                        .flatMap(tin -> Stream.of(tin.quantity().unit(), Unit.INCH, Unit.CENTIMETRE)
                                .filter(unit -> unit.dimension() == Dimension.LENGTH)
                                .filter(unit -> isWithin(tin, new Quantity(said.amount(), unit), ONE_SIDE)))
                        .findFirst()
                        .map(unit -> in(unit, said))
                : Optional.empty();
    }

    Optional<Setting> best(SpokenQuantity said, Quantity size) {
        double other =
                Math.max(around.weight(said, Kind.OF_ANOTHER_LENGTH), around.weightBehind(said, Kind.OF_ANOTHER_SIDE));
        double tin = around.weight(said, Kind.OF_A_TIN);
        boolean told = tin >= TELLING && tin > other;
        boolean unexplained = other < TELLING && heard.phrases.within(Kind.OF_A_TIN, said.start() - TALK, said.start());
        if (PassingTime.isOffered(said, heard) || !(told || unexplained)) {
            return Optional.empty();
        }
        return tins.stream()
                .filter(setting -> isWithin(setting, size(said, setting), told ? FARTHEST : NEAR))
                .max(Comparator.comparingInt(setting -> named(setting, said)));
    }

    private static boolean figures(Setting tin, Dimension dimension) {
        return tin.figures().stream().anyMatch(figure -> figure.dimension() == dimension);
    }

    private boolean isWithin(Setting tin, Quantity size, double farthest) {
        double said = base(size);
        return tin.figures().stream()
                .filter(figure -> figure.dimension() == size.dimension())
                .map(this::base)
                .anyMatch(written -> Math.max(said / written, written / said) <= farthest);
    }

    private double base(Quantity quantity) {
        return quantity.leastInBase(heard.household)
                .map(RationalNumber::doubleValue)
                .orElse(0.0);
    }

    private int named(Setting setting, SpokenQuantity said) {
        Set<String> own = Words.content(setting.what());
        int named = setting.step() == heard.stepAt(said.start()) ? 1 : 0;
        for (int at = said.start() - NAMED_REACH; at < said.end() + NAMED_REACH; at++) {
            named += own.contains(Words.singular(heard.words.text(at))) ? 1 : 0;
        }
        return named;
    }

    /** "two twenty centimetre tins" is heard as two hundred and twenty. */
    Quantity size(SpokenQuantity said, Setting tin) {
        Quantity size = said.quantity().orElseThrow();
        Optional<RationalNumber> value = size.amount().least();
        RationalNumber count = Rationals.of(tin.count()).multiply(HUNDRED);
        boolean counted = tin.count() > 1
                && size.unit() == Unit.CENTIMETRE
                && value.filter(one -> one.compareTo(count) > 0 && one.compareTo(count.add(HUNDRED)) < 0)
                        .isPresent();
        return counted ? new Quantity(Amount.of(value.orElseThrow().subtract(count)), size.unit()) : size;
    }
}
