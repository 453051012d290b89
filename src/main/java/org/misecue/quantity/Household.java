package org.misecue.quantity;

import java.util.Arrays;
import java.util.Optional;
import tech.units.indriya.function.RationalNumber;

/**
 * Whose cups, spoons and pints are meant. Sizes in millilitres, exact: US customary from the gallon of 231 in³ (NIST
 * Handbook 44), US label from 21 CFR 101.9(b)(5)(viii), imperial from the gallon of 4546.09 ml, Australian from the
 * Australian metric cup and 20 ml tablespoon.
 */
public enum Household {
    METRIC("metric", "5", "15", "250", "29.5735295625", "568.26125"),
    US_CUSTOMARY("us", "4.92892159375", "14.78676478125", "236.5882365", "29.5735295625", "473.176473"),
    US_LABEL("us-label", "5", "15", "240", "30", "473.176473"),
    IMPERIAL("uk", "5", "15", "284.130625", "28.4130625", "568.26125"),
    AUSTRALIAN("australia", "5", "20", "250", "28.4130625", "568.26125");

    private final String key;
    private final RationalNumber teaspoon;
    private final RationalNumber tablespoon;
    private final RationalNumber cup;
    private final RationalNumber fluidOunce;
    private final RationalNumber pint;

    Household(String key, String teaspoon, String tablespoon, String cup, String fluidOunce, String pint) {
        this.key = key;
        this.teaspoon = Rationals.of(teaspoon);
        this.tablespoon = Rationals.of(tablespoon);
        this.cup = Rationals.of(cup);
        this.fluidOunce = Rationals.of(fluidOunce);
        this.pint = Rationals.of(pint);
    }

    /** By the word that settings and options have for it: metric, us, us-label, uk, australia. */
    public static Optional<Household> ofKey(String key) {
        return Arrays.stream(values()).filter(one -> one.key.equals(key)).findFirst();
    }

    /** The size of a household measure of volume, in millilitres. */
    RationalNumber millilitres(Unit unit) {
        return switch (unit) {
            case TEASPOON -> teaspoon;
            case TABLESPOON -> tablespoon;
            case CUP -> cup;
            case FLUID_OUNCE -> fluidOunce;
            case PINT -> pint;
            default -> throw new IllegalArgumentException(unit + " is not a household measure of volume");
        };
    }
}
