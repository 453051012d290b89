package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.QuantityWords;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Whether an amount could be one of an ingredient line at all, by its dimension and its order of magnitude. */
final class Fit {

    /** Beyond this ratio, said to written, the amount is of something else: a slip of the tongue is smaller. */
    private static final double FARTHEST_RATIO = 6.5;

    private static final double IMPOSSIBLE = -20;
    private static final Set<String> FATS = Words.set("butter margarine shortening lard spread fat oleo");
    private static final Pattern TIMES = Pattern.compile("^\\W*(\\d{1,3})\\s*[x×]");
    private static final Pattern COUNTED_PACKS = Pattern.compile("(\\d{1,3})\\s+(\\p{L}+)");
    private static final RationalNumber MANY = Rationals.of(25);
    private static final RationalNumber SMALLEST_BARE_WEIGHT = Rationals.of(5);

    private Fit() {}

    /** More than zero speaks for the line, less against it. */
    static double of(SpokenQuantity said, IngredientLine line, Optional<Unit> carried, Hearing heard) {
        if (line.quantity().isEmpty()) {
            return said.unit().isPresent() ? -2 : IMPOSSIBLE;
        }
        Quantity written = line.quantity().get();
        Optional<Quantity> quantity = inUnits(said, line, carried);
        boolean bareWeight =
                said.manner() == Manner.BARE && written.unit() != Unit.EACH && !heard.on(Mechanism.BARE_NUMBERS);
        if (quantity.isEmpty()
                || isStickOfNoFat(quantity.get(), line)
                || bareWeight
                || (written.unit() != Unit.EACH && isCountOfThem(said, heard))) {
            return IMPOSSIBLE;
        }
        double manner = carried.isPresent()
                        && written.unit() != Unit.GRAM
                        && written.unit() != Unit.MILLILITRE
                        && !isOnly(said, heard)
                ? 0
                : byManner(said, written);
        Quantity nearest = nearestWritten(quantity.get(), line);
        if (nearest.dimension() != quantity.get().dimension()) {
            double crossing = crossing(quantity.get().dimension(), nearest.dimension());
            return manner + (crossing == 0 ? magnitude(quantity.get(), nearest, heard) : crossing);
        }
        return manner + 1.5 + magnitude(quantity.get(), nearest, heard);
    }

    /** Butter comes in sticks, and what is sold like it. */
    private static boolean isStickOfNoFat(Quantity said, IngredientLine line) {
        return said.unit() == Unit.STICK
                && Words.content(line.ingredient()).stream().noneMatch(FATS::contains);
    }

    /** "I've got a whole one here", "it's only one": of the things, not of the measure before. */
    private static boolean isOnly(SpokenQuantity said, Hearing heard) {
        return heard.words.text(said.end() - 1).equals("one")
                && (heard.words.normal(said.start() - 1, said.end()).startsWith("got a whole")
                        || heard.words.text(said.start() - 1).equals("only"));
    }

    /** "about six of them" counts pieces, whatever they weigh; "a hundred and fifty of them" are grams. */
    private static boolean isCountOfThem(SpokenQuantity said, Hearing heard) {
        return said.manner() == Manner.BARE && said.isBelow(MANY) && heard.isOfThem(said.end());
    }

    private static double byManner(SpokenQuantity said, Quantity written) {
        if (said.manner() == Manner.SHARE) {
            return written.unit() == Unit.EACH ? 0.5 : IMPOSSIBLE;
        }
        if (said.manner() != Manner.BARE) {
            return 0;
        }
        boolean one = said.amount().least().equals(Optional.of(Rationals.ONE));
        if (one && written.unit() != Unit.EACH) {
            return -6;
        }
        boolean small = said.isBelow(SMALLEST_BARE_WEIGHT);
        return switch (written.unit()) {
            case EACH -> 0.5;
            case GRAM, MILLILITRE -> small ? -6 : 0;
            case PINCH -> IMPOSSIBLE;
            default -> small ? -3 : -4;
        };
    }

    private static double crossing(Dimension said, Dimension written) {
        boolean measures = (said == Dimension.MASS || said == Dimension.VOLUME)
                && (written == Dimension.MASS || written == Dimension.VOLUME);
        if (measures) {
            return 0;
        }
        boolean smidgen = said == Dimension.SMIDGEN || written == Dimension.SMIDGEN;
        return smidgen ? -0.5 : -6;
    }

    /** A gram and a millilitre are near enough to each other for an order of magnitude. */
    private static double magnitude(Quantity said, Quantity written, Hearing heard) {
        double a = base(said, heard);
        double b = base(written, heard);
        if (a <= 0 || b <= 0) {
            return -5;
        }
        double ratio = Math.max(a / b, b / a);
        return ratio > FARTHEST_RATIO ? -5 : 0;
    }

    private static double base(Quantity quantity, Hearing heard) {
        return quantity.leastInBase(heard.household)
                .map(RationalNumber::doubleValue)
                .orElse(0.0);
    }

    /** What was said as a quantity: with its own unit, the one it goes on with, or the line's where only a number was said. */
    static Optional<Quantity> inUnits(SpokenQuantity said, IngredientLine line, Optional<Unit> carried) {
        if (said.manner() == Manner.BARE
                && carried.isPresent()
                && line.quantity().isPresent()) {
            return carried.map(unit -> new Quantity(said.amount(), unit));
        }
        if (said.unit().isPresent()) {
            return said.quantity();
        }
        return line.quantity().flatMap(written -> switch (said.manner()) {
            case BARE, SHARE -> Optional.of(new Quantity(said.amount(), written.unit()));
            case SPOONS ->
                written.unit() == Unit.TEASPOON || written.unit() == Unit.TABLESPOON
                        ? Optional.of(new Quantity(said.amount(), written.unit()))
                        : Optional.empty();
            case PACKED ->
                packs(line).flatMap(packs -> said.amount().least().map(count -> written.times(count.divide(packs))));
            default -> Optional.empty();
        });
    }

    /** How many packs the line is written for: the 2 of "2 x 400 g tins", the 1 of "385 g (1 tin)"; empty for none. */
    private static Optional<RationalNumber> packs(IngredientLine line) {
        Matcher times = TIMES.matcher(line.text());
        if (!line.packing().isEmpty()) {
            return Optional.of(times.find() ? Rationals.of(Long.parseLong(times.group(1))) : Rationals.ONE);
        }
        Matcher counted = COUNTED_PACKS.matcher(line.text());
        while (counted.find()) {
            if (QuantityWords.isPacking(counted.group(2))) {
                return Optional.of(Rationals.of(Long.parseLong(counted.group(1))));
            }
        }
        return Optional.empty();
    }

    /** The written figure of the same dimension and system where the line has two. */
    static Quantity nearestWritten(Quantity said, IngredientLine line) {
        Quantity written = line.quantity().orElseThrow();
        if (line.alternative().isEmpty()) {
            return written;
        }
        Quantity other = line.alternative().get();
        boolean otherFits = other.dimension() == said.dimension()
                && (written.dimension() != said.dimension()
                        || (Hearing.sameSystem(other.unit(), said.unit())
                                && !Hearing.sameSystem(written.unit(), said.unit())));
        return otherFits ? other : written;
    }
}
