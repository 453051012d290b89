package org.misecue.quantity;

import tech.units.indriya.function.RationalNumber;

/**
 * Quantities as a recipe prints them: "125 g", "1½ tsp", "2–3 tbsp", "180 °C", "45–50 minutes", "a pinch", "about 70 g".
 * The same in every locale. Spoons, cups, ounces, inches, pieces and times are written to the nearest eighth or third;
 * metric sizes as decimals with at most two places; whole grams and millilitres from 1000 up in kilograms and litres,
 * with three. Pounds that are no quarters are written with ounces.
 */
public final class QuantityWriter {

    private static final RationalNumber THOUSAND = Rationals.of(1000);

    private QuantityWriter() {}

    public static String text(Quantity quantity) {
        return written(quantity.amount(), quantity.unit(), QuantityWriter::withUnit);
    }

    /** The unit in which an amount is shown: kilograms from a thousand whole grams up. */
    public static Unit unitShown(Quantity quantity) {
        return quantity.amount()
                .least()
                .map(least ->
                        shownIn(quantity.unit(), least, quantity.amount().most().orElse(least)))
                .orElse(quantity.unit());
    }

    /** As a person says it: "one hundred and twenty-five grams", "half a teaspoon". */
    public static String words(Quantity quantity) {
        return written(quantity.amount(), quantity.unit(), SpokenWriter::words);
    }

    /** Writes two ends with their unit. */
    private interface EndsWriter {
        String write(RationalNumber from, RationalNumber to, Unit unit);
    }

    private static String written(Amount amount, Unit unit, EndsWriter writer) {
        if (amount instanceof Amount.Unstated unstated) {
            return unstated.words();
        }
        if (amount instanceof Amount.Approximate approximate) {
            String hedge = approximate.hedge().isBlank() ? "about" : approximate.hedge();
            return hedge + " " + written(approximate.about(), unit, writer);
        }
        RationalNumber from = amount.least().orElseThrow();
        RationalNumber to = amount.most().orElseThrow();
        Unit shown = shownIn(unit, from, to);
        return shown == unit
                ? writer.write(from, to, unit)
                : writer.write(unit.inFixed(from, shown), unit.inFixed(to, shown), shown);
    }

    /** Kilograms and litres where the amount is at least one, and whole in grams and millilitres. */
    private static Unit shownIn(Unit unit, RationalNumber least, RationalNumber most) {
        boolean large = least.compareTo(THOUSAND) >= 0 && Rationals.isWhole(least) && Rationals.isWhole(most);
        boolean small = least.compareTo(Rationals.ONE) < 0 && least.signum() > 0;
        return switch (unit) {
            case GRAM -> large ? Unit.KILOGRAM : unit;
            case MILLILITRE -> large ? Unit.LITRE : unit;
            case KILOGRAM -> small ? Unit.GRAM : unit;
            case LITRE -> small ? Unit.MILLILITRE : unit;
            default -> unit;
        };
    }

    private static String withUnit(RationalNumber from, RationalNumber to, Unit unit) {
        if (unit == Unit.PINCH && from.equals(to) && from.equals(Rationals.ONE)) {
            return "a pinch";
        }
        if (unit == Unit.POUND && from.equals(to) && from.signum() > 0 && !isEasy(from)) {
            return poundsAndOunces(from);
        }
        String low = number(from, unit);
        String high = number(to, unit);
        String numbers = low.equals(high) ? low : low + "–" + high;
        UnitText text = UnitText.of(unit);
        String name = to.compareTo(Rationals.ONE) <= 0 ? text.one() : text.many();
        if (unit == Unit.GAS_MARK) {
            return name + " " + numbers;
        }
        return name.isEmpty() ? numbers : numbers + " " + name;
    }

    /** Whole, half and quarter pounds. */
    private static boolean isEasy(RationalNumber pounds) {
        return Rationals.isWhole(pounds.multiply(Rationals.of(4)));
    }

    /** "1 lb 6½ oz", for no scale shows thirteen thirty-seconds of a pound; "7 oz". */
    private static String poundsAndOunces(RationalNumber pounds) {
        RationalNumber whole = Rationals.floor(pounds);
        Quantity ounces = Quantity.of(pounds.subtract(whole).multiply(Rationals.of(16)), Unit.OUNCE);
        return whole.signum() == 0 ? text(ounces) : text(Quantity.of(whole, Unit.POUND)) + " " + text(ounces);
    }

    /** The number alone, in the manner of its unit: "1½" of a spoon, "1.5" of a gram. */
    public static String number(RationalNumber value, Unit unit) {
        if (!UnitText.of(unit).fractions()) {
            int places = unit == Unit.KILOGRAM || unit == Unit.LITRE ? 3 : 2;
            return Rationals.rounded(value, places).toPlainString();
        }
        RationalNumber near = Vulgar.nearest(value);
        if (near.signum() == 0) {
            return Rationals.rounded(value, 2).toPlainString();
        }
        RationalNumber whole = Rationals.floor(near);
        String glyph = Vulgar.of(near.subtract(whole)).glyph();
        return whole.signum() == 0 ? glyph : Rationals.decimal(whole).toPlainString() + glyph;
    }
}
