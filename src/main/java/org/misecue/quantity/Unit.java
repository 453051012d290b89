package org.misecue.quantity;

import java.util.Arrays;
import java.util.Optional;
import tech.units.indriya.function.RationalNumber;

/**
 * The units of a recipe. The code is the one of the JSON documents. Sizes of the fixed units are taken from JSR-385
 * unit libraries by {@link UnitSizes}; sizes of cups, spoons, fluid ounces and pints depend on the {@link Household}.
 */
public enum Unit {
    GRAM("g", Dimension.MASS, MeasureSystem.METRIC),
    KILOGRAM("kg", Dimension.MASS, MeasureSystem.METRIC),
    MILLILITRE("ml", Dimension.VOLUME, MeasureSystem.METRIC),
    LITRE("l", Dimension.VOLUME, MeasureSystem.METRIC),
    TEASPOON("tsp", Dimension.VOLUME, MeasureSystem.SHARED),
    TABLESPOON("tbsp", Dimension.VOLUME, MeasureSystem.SHARED),
    CUP("cup", Dimension.VOLUME, MeasureSystem.HOUSEHOLD),
    FLUID_OUNCE("fl-oz", Dimension.VOLUME, MeasureSystem.HOUSEHOLD),
    PINT("pint", Dimension.VOLUME, MeasureSystem.HOUSEHOLD),
    OUNCE("oz", Dimension.MASS, MeasureSystem.HOUSEHOLD),
    POUND("lb", Dimension.MASS, MeasureSystem.HOUSEHOLD),
    /** A stick of butter as sold in the United States: a quarter of a pound. */
    STICK("stick", Dimension.MASS, MeasureSystem.HOUSEHOLD),
    EACH("each", Dimension.COUNT, MeasureSystem.SHARED),
    PINCH("pinch", Dimension.SMIDGEN, MeasureSystem.SHARED),
    CELSIUS("C", Dimension.TEMPERATURE, MeasureSystem.METRIC),
    FAHRENHEIT("F", Dimension.TEMPERATURE, MeasureSystem.HOUSEHOLD),
    GAS_MARK("gas", Dimension.TEMPERATURE, MeasureSystem.HOUSEHOLD),
    MINUTE("min", Dimension.DURATION, MeasureSystem.SHARED),
    HOUR("h", Dimension.DURATION, MeasureSystem.SHARED),
    CENTIMETRE("cm", Dimension.LENGTH, MeasureSystem.METRIC),
    INCH("in", Dimension.LENGTH, MeasureSystem.HOUSEHOLD);

    private final String code;
    private final Dimension dimension;
    private final MeasureSystem system;

    Unit(String code, Dimension dimension, MeasureSystem system) {
        this.code = code;
        this.dimension = dimension;
        this.system = system;
    }

    /** The unit's name in the JSON documents. */
    public String code() {
        return code;
    }

    public Dimension dimension() {
        return dimension;
    }

    public MeasureSystem system() {
        return system;
    }

    public static Optional<Unit> ofCode(String code) {
        return Arrays.stream(values()).filter(unit -> unit.code.equals(code)).findFirst();
    }

    /**
     * The value in the base unit of its dimension: gram, millilitre, each, pinch, degree Celsius, minute or centimetre.
     * Always exact: every size is rational, and so are the scales of temperature.
     *
     * @param household whose cups, spoons, fluid ounces and pints; other units do not ask
     */
    public RationalNumber toBase(RationalNumber value, Household household) {
        return switch (this) {
            case TEASPOON, TABLESPOON, CUP, FLUID_OUNCE, PINT -> value.multiply(household.millilitres(this));
            case FAHRENHEIT -> UnitSizes.celsiusOfFahrenheit(value);
            case GAS_MARK -> UnitSizes.celsiusOfGasMark(value);
            default -> {
                RationalNumber size = UnitSizes.inBase(this);
                yield Rationals.isOne(size) ? value : value.multiply(size);
            }
        };
    }

    /**
     * The inverse of {@link #toBase}, exact. Only gas marks below 1 are steps: what is cooler than mark 1 becomes ½, what
     * is cooler than that ¼.
     */
    public RationalNumber fromBase(RationalNumber base, Household household) {
        return switch (this) {
            case TEASPOON, TABLESPOON, CUP, FLUID_OUNCE, PINT -> base.divide(household.millilitres(this));
            case FAHRENHEIT -> UnitSizes.fahrenheitOfCelsius(base);
            case GAS_MARK -> UnitSizes.gasMarkOfCelsius(base);
            default -> base.divide(UnitSizes.inBase(this));
        };
    }

    /** The value in another unit, where neither size depends on a household. */
    RationalNumber inFixed(RationalNumber value, Unit other) {
        return value.multiply(UnitSizes.inBase(this)).divide(UnitSizes.inBase(other));
    }
}
