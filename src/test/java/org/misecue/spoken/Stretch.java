package org.misecue.spoken;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * The words {@code [start, end)} of a sentence and the figures heard in them: "200 g", "70 aside". A range is its two
 * ends, "2 and 3 tbsp", because the other recogniser finds numbers only. Hours are minutes in both, millimetres are
 * centimetres.
 */
record Stretch(int start, int end, String figures) {

    /** What measures nothing here, whoever says so. The value is compared all the same. */
    private static final String ASIDE = "aside";

    private static final Set<Aside.Kind> OUR_ASIDES = Set.of(Aside.Kind.PRICE, Aside.Kind.AGE, Aside.Kind.TIME);
    private static final Set<String> THEIR_ASIDES = Set.of("currency", "percentage", "age");

    /** The units of the other recogniser; a "Degree" names no scale. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            entry("", ""),
            entry("Gram", "g"),
            entry("Kilogram", "kg"),
            entry("Milliliter", "ml"),
            entry("Liter", "l"),
            entry("Teaspoon", "tsp"),
            entry("Tablespoon", "tbsp"),
            entry("Cup", "cup"),
            entry("Pint", "pint"),
            entry("Fluid ounce", "fl-oz"),
            entry("Ounce", "oz"),
            entry("Pound", "lb"),
            entry("Pinch", "pinch"),
            entry("Inch", "in"),
            entry("Millimeter", "mm"),
            entry("Centimeter", "cm"),
            entry("C", "C"),
            entry("F", "F"),
            entry("Degree", ""),
            entry("Minute", "min"),
            entry("Hour", "h"),
            entry("Second", ASIDE),
            entry("Day", ASIDE),
            entry("Week", ASIDE),
            entry("Month", ASIDE),
            entry("Year", ASIDE));

    /** What we hear; "between" is not counted as the start of a range, since the other recogniser hears numbers only. */
    static Stretch of(WordStream words, SpokenQuantity heard) {
        int first = words.text(heard.start()).equals("between") ? heard.start() + 1 : heard.start();
        String unit = isTheirAside(heard) ? ASIDE : heard.unit().map(Unit::code).orElse("");
        boolean percent = heard.manner() == SpokenQuantity.Manner.PERCENT;
        Amount amount = percent ? heard.amount().times(Rationals.of(100)) : heard.amount();
        RationalNumber most = amount.most().orElseThrow();
        String low = amount.least()
                .filter(least -> !least.equals(most))
                .map(least -> figure(least, unit).split(" ")[0] + " and ")
                .orElse("");
        return new Stretch(words.at(first).word(), words.at(heard.end() - 1).word() + 1, low + figure(most, unit));
    }

    private static boolean isTheirAside(SpokenQuantity heard) {
        return heard.manner() == SpokenQuantity.Manner.PERCENT
                || heard.aside().map(Aside::kind).filter(OUR_ASIDES::contains).isPresent();
    }

    /** What the other recogniser finds; empty for ordinals, which are no amounts. */
    static Optional<Stretch> of(ReferenceTables.Find find) {
        if (find.kind().equals("none") || find.kind().equals("ordinal")) {
            return Optional.empty();
        }
        int at = Integer.parseInt(find.at());
        String unit = THEIR_ASIDES.contains(find.kind())
                ? ASIDE
                : Optional.ofNullable(UNITS.get(find.unit())).orElseThrow();
        int start = gaps(find.sentence().substring(0, at));
        int end = gaps(find.sentence().substring(0, at + find.text().length())) + 1;
        return Optional.of(new Stretch(start, end, figure(Rationals.of(find.value()), unit)));
    }

    /** The figures of several stretches that lie in the same words, behind the word with which they begin. */
    static String describe(String sentence, List<Stretch> stretches) {
        return stretches.isEmpty()
                ? ""
                : sentence.split(" ")[stretches.get(0).start()]
                        + ": "
                        + String.join(
                                " and ",
                                stretches.stream().map(Stretch::figures).toList());
    }

    private static String figure(RationalNumber value, String unit) {
        return switch (unit) {
            case "h" -> figure(value.multiply(Rationals.of(60)), "min");
            case "mm" -> figure(value.divide(Rationals.of(10)), "cm");
            default -> (Rationals.decimal(value).toPlainString() + " " + unit).strip();
        };
    }

    private static int gaps(String text) {
        return (int) text.chars().filter(c -> c == ' ').count();
    }
}
