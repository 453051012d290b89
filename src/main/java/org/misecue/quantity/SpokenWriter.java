package org.misecue.quantity;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import tech.units.indriya.function.RationalNumber;

/** Amounts as a person says them in British English; numbers are spelt out by ICU's rules. */
final class SpokenWriter {

    private static final RationalNumber HALF = Rationals.of(1, 2);

    private SpokenWriter() {}

    /** @param from the value, or the lower end; equal to the upper where there is one value */
    static String words(RationalNumber from, RationalNumber to, Unit unit) {
        RationalNumber low = said(from, unit);
        RationalNumber high = said(to, unit);
        return low.equals(high) ? one(low, unit) : named(number(low, unit) + " to " + number(high, unit), high, unit);
    }

    /** Household amounts to the nearest eighth or third, the others to two places. */
    private static RationalNumber said(RationalNumber value, Unit unit) {
        RationalNumber near = Vulgar.nearest(value);
        return UnitText.of(unit).fractions() && near.signum() > 0 ? near : Rationals.of(Rationals.rounded(value, 2));
    }

    private static String one(RationalNumber value, Unit unit) {
        UnitText text = UnitText.of(unit);
        if (unit == Unit.PINCH && value.equals(Rationals.ONE)) {
            return "a pinch";
        }
        boolean measured = unit != Unit.EACH && unit != Unit.GAS_MARK;
        if (measured && value.equals(HALF)) {
            return "half " + text.spokenWithArticle();
        }
        String fraction = text.fractions() ? Vulgar.of(value).spoken() : "";
        return measured && !fraction.isEmpty()
                ? fraction + " of " + text.spokenWithArticle()
                : named(number(value, unit), value, unit);
    }

    private static String named(String number, RationalNumber value, Unit unit) {
        UnitText text = UnitText.of(unit);
        String name = value.equals(Rationals.ONE) ? text.spokenOne() : text.spokenMany();
        if (unit == Unit.GAS_MARK) {
            return name + " " + number;
        }
        return name.isEmpty() ? number : number + " " + name;
    }

    /** Quarters, thirds and eighths of household measures, halves of all; anything else with a "point". */
    private static String number(RationalNumber value, Unit unit) {
        RationalNumber whole = Rationals.floor(value);
        RationalNumber rest = value.subtract(whole);
        String fraction = UnitText.of(unit).fractions() || rest.equals(HALF)
                ? Vulgar.of(rest).spoken()
                : "";
        if (fraction.isEmpty()) {
            return Spelling.of(value);
        }
        if (whole.signum() == 0) {
            return rest.equals(HALF) ? "half" : fraction;
        }
        return Spelling.of(whole) + " and " + fraction;
    }

    /** Made on first use: ICU's rules take their time to load. */
    private static final class Spelling {
        private static final RuleBasedNumberFormat RULES =
                new RuleBasedNumberFormat(ULocale.UK, RuleBasedNumberFormat.SPELLOUT);

        static synchronized String of(RationalNumber value) {
            return RULES.format(Rationals.rounded(value, 2).doubleValue(), "%spellout-numbering-verbose");
        }
    }
}
