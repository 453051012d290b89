package org.misecue.quantity;

import java.util.List;
import tech.units.indriya.function.RationalNumber;

/** The fractions that kitchens measure in: thirds and eighths, with their glyphs and the words a person says. */
record Vulgar(RationalNumber value, String glyph, String spoken) {

    static final List<Vulgar> EIGHTHS_AND_THIRDS = List.of(
            new Vulgar(Rationals.of(1, 8), "⅛", "an eighth"),
            new Vulgar(Rationals.of(1, 4), "¼", "a quarter"),
            new Vulgar(Rationals.of(1, 3), "⅓", "a third"),
            new Vulgar(Rationals.of(3, 8), "⅜", "three eighths"),
            new Vulgar(Rationals.of(1, 2), "½", "a half"),
            new Vulgar(Rationals.of(5, 8), "⅝", "five eighths"),
            new Vulgar(Rationals.of(2, 3), "⅔", "two thirds"),
            new Vulgar(Rationals.of(3, 4), "¾", "three quarters"),
            new Vulgar(Rationals.of(7, 8), "⅞", "seven eighths"));

    /** Glyph and words of a fraction that {@link #nearest} gave; empty for 0. */
    static Vulgar of(RationalNumber fraction) {
        return EIGHTHS_AND_THIRDS.stream()
                .filter(vulgar -> vulgar.value.equals(fraction))
                .findFirst()
                .orElseGet(() -> new Vulgar(Rationals.ZERO, "", ""));
    }

    /** The nearest whole number of eighths or thirds; of two equally near ones the larger. */
    static RationalNumber nearest(RationalNumber value) {
        return nearest(value, EIGHTHS_AND_THIRDS.stream().map(Vulgar::value).toList());
    }

    /** The nearest sum of a whole number and one of these fractions, or the whole number alone; halfway goes up. */
    static RationalNumber nearest(RationalNumber value, List<RationalNumber> fractions) {
        RationalNumber whole = Rationals.floor(value);
        RationalNumber best = whole;
        for (RationalNumber fraction : fractions) {
            best = nearer(value, best, whole.add(fraction));
        }
        return nearer(value, best, whole.add(Rationals.ONE));
    }

    private static RationalNumber nearer(RationalNumber value, RationalNumber lower, RationalNumber higher) {
        RationalNumber below = value.subtract(lower).abs();
        RationalNumber above = higher.subtract(value).abs();
        return below.compareTo(above) < 0 ? lower : higher;
    }
}
