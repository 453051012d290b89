package org.misecue.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import tech.units.indriya.function.RationalNumber;

/**
 * Rounds as a person weighs and measures: masses to the scale's resolution, spoons and cups to the sets that are sold,
 * pinches to whole ones, pieces to whole ones or halves. Nothing that is more than zero is rounded to zero.
 * Temperatures, times and lengths are left alone.
 *
 * @param resolution what the scale shows, a mass above zero: 1 g, 5 g, 0.1 g; liquids are taken to be weighed too, to
 *     1 ml at the finest
 * @param household whose spoons and cups
 */
public record KitchenRounding(Quantity resolution, Household household) {

    private static final RationalNumber HALF = Rationals.of(1, 2);
    private static final RationalNumber QUARTER = Rationals.of(1, 4);
    private static final RationalNumber EIGHTH = Rationals.of(1, 8);
    private static final RationalNumber CLOSE = Rationals.of(1, 20);
    private static final RationalNumber SIXTY_FOURTH = Rationals.of(1, 64);
    private static final RationalNumber THIRTY_SECOND = Rationals.of(1, 32);
    private static final RationalNumber FEW = Rationals.of(5);
    private static final RationalNumber FEW_SPOONS = Rationals.of(3);
    private static final RationalNumber MANY_SPOONS = Rationals.of(8);
    private static final RationalNumber FEW_OUNCES = Rationals.of(4);
    private static final RationalNumber MANY_OUNCES = Rationals.of(32);
    private static final RationalNumber FEW_POUNDS = Rationals.of(2);

    /** What a set of teaspoons of ⅛, ¼, ½, ¾ and 1 makes with at most two of them for the fraction. */
    private static final List<RationalNumber> TEASPOONS = fractions("⅛¼⅜½⅝¾⅞");

    private static final List<RationalNumber> CUPS = fractions("¼⅓½⅔¾");

    /** @throws IllegalArgumentException if the resolution is no exact mass above zero */
    public KitchenRounding {
        if (resolution.dimension() != Dimension.MASS
                || !(resolution.amount() instanceof Amount.Exact exact)
                || exact.value().signum() <= 0) {
            throw new IllegalArgumentException(
                    "a scale's resolution is a mass above zero, such as 1 g, not " + QuantityWriter.text(resolution));
        }
    }

    /** A scale that shows grams, and metric spoons. */
    public static KitchenRounding toTheGram() {
        return new KitchenRounding(Quantity.of(1, Unit.GRAM), Household.METRIC);
    }

    /**
     * A rounded quantity.
     *
     * @param quantity what to weigh or measure
     * @param relativeError (rounded − exact) ÷ exact, of the end of a range that is worst off; 0 where nothing changed
     */
    public record Rounded(Quantity quantity, RationalNumber relativeError) {}

    /** Rounded; pieces to halves up to 5, to whole ones beyond. */
    public Rounded round(Quantity exact) {
        return round(exact, exact.dimension() == Dimension.COUNT && isFew(exact) ? HALF : Rationals.ONE);
    }

    /** Rounded; pieces to whole ones: eggs. */
    public Rounded roundWhole(Quantity exact) {
        return round(exact, Rationals.ONE);
    }

    /** Rounded to halves of its own unit, no less than one half. */
    public static Rounded toHalves(Quantity exact) {
        return changed(exact, value -> stepped(value, HALF));
    }

    /** Rounded to the fractions of a set of cups, in its own unit, no less than a quarter. */
    public static Rounded toCups(Quantity exact) {
        return changed(exact, value -> atLeast(QUARTER, Vulgar.nearest(value, CUPS)));
    }

    /** Rounded to the fractions of a set of teaspoons, in its own unit, no less than an eighth. */
    public static Rounded toTeaspoons(Quantity exact) {
        return changed(exact, value -> atLeast(EIGHTH, Vulgar.nearest(value, TEASPOONS)));
    }

    private Rounded round(Quantity exact, RationalNumber piece) {
        Unit unit = measuredIn(exact);
        Quantity measured = unit == exact.unit() ? exact : exact.in(unit, household);
        return inLargerUnit(changed(measured, value -> rounded(value, unit, piece)));
    }

    /** What came out as three teaspoons is a tablespoon, and 32 ounces are two pounds. */
    private Rounded inLargerUnit(Rounded rounded) {
        Quantity quantity = rounded.quantity();
        Unit unit = measuredIn(quantity);
        return unit == quantity.unit() ? rounded : new Rounded(quantity.in(unit, household), rounded.relativeError());
    }

    private static Rounded changed(Quantity exact, UnaryOperator<RationalNumber> change) {
        Quantity rounded = exact.map(value -> value.signum() == 0 ? value : change.apply(value));
        RationalNumber low = error(exact.amount().least(), rounded.amount().least());
        RationalNumber high = error(exact.amount().most(), rounded.amount().most());
        return new Rounded(rounded, low.abs().compareTo(high.abs()) > 0 ? low : high);
    }

    private static boolean isFew(Quantity exact) {
        return exact.amount().most().filter(most -> most.compareTo(FEW) <= 0).isPresent();
    }

    /**
     * Too little for the smallest cup is measured in tablespoons, and what the one or two spoons of a set do not make in
     * teaspoons; teaspoons that make up whole tablespoons are measured in those. Nobody counts out more than half a cup
     * of spoons: a jug or a cup does it. Many ounces are pounds, and a pint that is no quarter is fluid ounces.
     */
    private Unit measuredIn(Quantity exact) {
        RationalNumber least = exact.amount().least().orElse(Rationals.ONE);
        return switch (exact.unit()) {
            case CUP -> least.compareTo(QUARTER) < 0 ? measuredIn(exact.in(Unit.TABLESPOON, household)) : Unit.CUP;
            case TABLESPOON -> spooned(exact, least);
            case TEASPOON -> {
                Quantity tablespoons = exact.in(Unit.TABLESPOON, household);
                boolean few = tablespoons.amount().least().orElse(least).compareTo(FEW_SPOONS) < 0;
                yield few && !isMultiple(tablespoons, Rationals.ONE) ? Unit.TEASPOON : measuredIn(tablespoons);
            }
            case OUNCE -> least.compareTo(MANY_OUNCES) >= 0 ? Unit.POUND : Unit.OUNCE;
            case PINT -> isMultiple(exact, QUARTER) ? Unit.PINT : Unit.FLUID_OUNCE;
            default -> exact.unit();
        };
    }

    private Unit spooned(Quantity tablespoons, RationalNumber least) {
        if (least.compareTo(MANY_SPOONS) > 0) {
            return isAmerican() ? cups(tablespoons) : Unit.MILLILITRE;
        }
        boolean few = least.compareTo(FEW_SPOONS) < 0;
        boolean halves = least.compareTo(HALF) >= 0
                && toHalves(tablespoons).relativeError().abs().compareTo(CLOSE) <= 0;
        return few && !halves ? Unit.TEASPOON : Unit.TABLESPOON;
    }

    /** Cups where their fractions come close. */
    private Unit cups(Quantity tablespoons) {
        Rounded cups = toCups(tablespoons.in(Unit.CUP, household));
        return cups.relativeError().abs().compareTo(CLOSE) <= 0 ? Unit.CUP : Unit.TABLESPOON;
    }

    private boolean isAmerican() {
        return household == Household.US_CUSTOMARY || household == Household.US_LABEL;
    }

    private static boolean isMultiple(Quantity quantity, RationalNumber step) {
        return isWhole(quantity.times(Rationals.ONE.divide(step)));
    }

    private static boolean isWhole(Quantity quantity) {
        return quantity.amount()
                        .least()
                        .filter(value -> value.signum() > 0 && Rationals.isWhole(value))
                        .isPresent()
                && quantity.amount().most().filter(Rationals::isWhole).isPresent();
    }

    private RationalNumber rounded(RationalNumber value, Unit unit, RationalNumber piece) {
        return switch (unit) {
            case GRAM, KILOGRAM -> stepped(value, grams().divide(unit.toBase(Rationals.ONE, household)));
            case MILLILITRE, LITRE -> stepped(value, millilitres().divide(unit.toBase(Rationals.ONE, household)));
            case TEASPOON -> atLeast(EIGHTH, Vulgar.nearest(value, TEASPOONS));
            case TABLESPOON -> stepped(value, HALF);
            case CUP -> atLeast(QUARTER, Vulgar.nearest(value, CUPS));
            case OUNCE, FLUID_OUNCE -> stepped(value, value.compareTo(FEW_OUNCES) < 0 ? EIGHTH : QUARTER);
            case STICK -> stepped(value, EIGHTH);
            case POUND -> stepped(value, value.compareTo(FEW_POUNDS) < 0 ? SIXTY_FOURTH : THIRTY_SECOND);
            case PINT -> stepped(value, QUARTER);
            case EACH -> stepped(value, piece);
            case PINCH -> stepped(value, Rationals.ONE);
            default -> value;
        };
    }

    private RationalNumber grams() {
        return resolution.leastInBase(household).orElseThrow();
    }

    private RationalNumber millilitres() {
        return atLeast(Rationals.ONE, grams());
    }

    private static RationalNumber stepped(RationalNumber value, RationalNumber step) {
        return atLeast(step, Rationals.nearest(value, step));
    }

    private static RationalNumber atLeast(RationalNumber least, RationalNumber value) {
        return value.compareTo(least) < 0 ? least : value;
    }

    private static RationalNumber error(Optional<RationalNumber> exact, Optional<RationalNumber> rounded) {
        if (exact.isEmpty() || rounded.isEmpty() || exact.get().signum() == 0) {
            return Rationals.ZERO;
        }
        return rounded.get().subtract(exact.get()).divide(exact.get());
    }

    private static List<RationalNumber> fractions(String glyphs) {
        return Vulgar.EIGHTHS_AND_THIRDS.stream()
                .filter(vulgar -> glyphs.contains(vulgar.glyph()))
                .map(Vulgar::value)
                .toList();
    }
}
