package org.misecue.quantity;

import java.util.EnumMap;
import java.util.Map;
import systems.uom.common.USCustomary;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/** Exact sizes of the fixed units in the base unit of their dimension, asked of the JSR-385 unit libraries once. */
final class UnitSizes {

    private static final RationalNumber FREEZING_F = Rationals.of(32);
    private static final RationalNumber NINE_FIFTHS = Rationals.of(9, 5);
    private static final RationalNumber GAS_ZERO_F = Rationals.of(250);
    private static final RationalNumber GAS_STEP_F = Rationals.of(25);

    private static final Map<Unit, RationalNumber> IN_BASE = new EnumMap<>(Unit.class);

    static {
        RationalNumber gramsPerPound = size(USCustomary.POUND, Units.GRAM);
        IN_BASE.put(Unit.GRAM, Rationals.ONE);
        IN_BASE.put(Unit.KILOGRAM, size(Units.KILOGRAM, Units.GRAM));
        IN_BASE.put(Unit.POUND, gramsPerPound);
        IN_BASE.put(Unit.OUNCE, gramsPerPound.divide(Rationals.of(16)));
        IN_BASE.put(Unit.STICK, gramsPerPound.divide(Rationals.of(4)));
        IN_BASE.put(Unit.MILLILITRE, Rationals.ONE);
        IN_BASE.put(Unit.LITRE, Rationals.of(1000));
        IN_BASE.put(Unit.EACH, Rationals.ONE);
        IN_BASE.put(Unit.PINCH, Rationals.ONE);
        IN_BASE.put(Unit.CELSIUS, Rationals.ONE);
        IN_BASE.put(Unit.MINUTE, Rationals.ONE);
        IN_BASE.put(Unit.HOUR, size(Units.HOUR, Units.MINUTE));
        IN_BASE.put(Unit.CENTIMETRE, Rationals.ONE);
        IN_BASE.put(Unit.INCH, size(USCustomary.INCH, Units.METRE).multiply(Rationals.of(100)));
    }

    private UnitSizes() {}

    static RationalNumber inBase(Unit unit) {
        RationalNumber size = IN_BASE.get(unit);
        if (size == null) {
            throw new IllegalArgumentException(unit + " has no fixed size");
        }
        return size;
    }

    static RationalNumber celsiusOfFahrenheit(RationalNumber fahrenheit) {
        return fahrenheit.subtract(FREEZING_F).divide(NINE_FIFTHS);
    }

    static RationalNumber fahrenheitOfCelsius(RationalNumber celsius) {
        return celsius.multiply(NINE_FIFTHS).add(FREEZING_F);
    }

    /** Marks from 1 up are 250 °F and 25 °F more each; ½ and ¼ are 250 and 225 °F (gas-mark tables). */
    static RationalNumber celsiusOfGasMark(RationalNumber mark) {
        RationalNumber fahrenheit;
        if (mark.compareTo(Rationals.of(1, 4)) <= 0) {
            fahrenheit = Rationals.of(225);
        } else if (mark.compareTo(Rationals.ONE) < 0) {
            fahrenheit = GAS_ZERO_F;
        } else {
            fahrenheit = GAS_ZERO_F.add(GAS_STEP_F.multiply(mark));
        }
        return celsiusOfFahrenheit(fahrenheit);
    }

    static RationalNumber gasMarkOfCelsius(RationalNumber celsius) {
        RationalNumber fahrenheit = fahrenheitOfCelsius(celsius);
        RationalNumber mark = fahrenheit.subtract(GAS_ZERO_F).divide(GAS_STEP_F);
        if (mark.compareTo(Rationals.ONE) >= 0) {
            return mark;
        }
        return fahrenheit.compareTo(GAS_ZERO_F) >= 0 ? Rationals.of(1, 2) : Rationals.of(1, 4);
    }

    private static <Q extends javax.measure.Quantity<Q>> RationalNumber size(
            javax.measure.Unit<Q> unit, javax.measure.Unit<Q> base) {
        Number factor = unit.getConverterTo(base).convert((Number) RationalNumber.ONE);
        if (factor instanceof RationalNumber exact) {
            return exact;
        }
        return Rationals.of(factor.toString());
    }
}
