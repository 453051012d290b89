package org.misecue.spoken;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

/** Units as they are said, and as recognisers write them. */
public final class UnitWords {

    /** A unit heard in {@code [start, end)}. */
    public record Heard(Unit unit, int end) {}

    private static final Map<String, Unit> WORDS = Map.ofEntries(
            entry("g", Unit.GRAM),
            entry("gram", Unit.GRAM),
            entry("grams", Unit.GRAM),
            entry("gramme", Unit.GRAM),
            entry("grammes", Unit.GRAM),
            entry("kg", Unit.KILOGRAM),
            entry("kilo", Unit.KILOGRAM),
            entry("kilos", Unit.KILOGRAM),
            entry("kilogram", Unit.KILOGRAM),
            entry("kilograms", Unit.KILOGRAM),
            entry("ml", Unit.MILLILITRE),
            entry("mls", Unit.MILLILITRE),
            entry("mil", Unit.MILLILITRE),
            entry("mils", Unit.MILLILITRE),
            entry("mill", Unit.MILLILITRE),
            entry("mills", Unit.MILLILITRE),
            entry("millilitre", Unit.MILLILITRE),
            entry("millilitres", Unit.MILLILITRE),
            entry("milliliter", Unit.MILLILITRE),
            entry("milliliters", Unit.MILLILITRE),
            entry("l", Unit.LITRE),
            entry("litre", Unit.LITRE),
            entry("litres", Unit.LITRE),
            entry("liter", Unit.LITRE),
            entry("liters", Unit.LITRE),
            entry("tsp", Unit.TEASPOON),
            entry("teaspoon", Unit.TEASPOON),
            entry("teaspoons", Unit.TEASPOON),
            entry("teaspoonful", Unit.TEASPOON),
            entry("teaspoonfuls", Unit.TEASPOON),
            entry("tbsp", Unit.TABLESPOON),
            entry("tablespoon", Unit.TABLESPOON),
            entry("tablespoons", Unit.TABLESPOON),
            entry("tablespoonful", Unit.TABLESPOON),
            entry("tablespoonfuls", Unit.TABLESPOON),
            entry("cup", Unit.CUP),
            entry("cups", Unit.CUP),
            entry("cupful", Unit.CUP),
            entry("cupfuls", Unit.CUP),
            entry("pint", Unit.PINT),
            entry("pints", Unit.PINT),
            entry("oz", Unit.OUNCE),
            entry("ounce", Unit.OUNCE),
            entry("ounces", Unit.OUNCE),
            entry("lb", Unit.POUND),
            entry("lbs", Unit.POUND),
            entry("pound", Unit.POUND),
            entry("pounds", Unit.POUND),
            entry("stick", Unit.STICK),
            entry("sticks", Unit.STICK),
            entry("pinch", Unit.PINCH),
            entry("pinches", Unit.PINCH),
            entry("celsius", Unit.CELSIUS),
            entry("centigrade", Unit.CELSIUS),
            entry("fahrenheit", Unit.FAHRENHEIT),
            entry("minute", Unit.MINUTE),
            entry("minutes", Unit.MINUTE),
            entry("min", Unit.MINUTE),
            entry("mins", Unit.MINUTE),
            entry("hour", Unit.HOUR),
            entry("hours", Unit.HOUR),
            entry("hr", Unit.HOUR),
            entry("hrs", Unit.HOUR),
            entry("cm", Unit.CENTIMETRE),
            entry("centimetre", Unit.CENTIMETRE),
            entry("centimetres", Unit.CENTIMETRE),
            entry("centimeter", Unit.CENTIMETRE),
            entry("centimeters", Unit.CENTIMETRE),
            entry("inch", Unit.INCH),
            entry("inches", Unit.INCH));

    private static final Set<String> SPOONS = Set.of("spoon", "spoons", "spoonful", "spoonfuls");

    /** Units that misecue tells in another one. A dessertspoon is 10 ml and a quart two pints; from memory. */
    private static final Map<String, Quantity> DERIVED = Map.ofEntries(
            entry("mm", tenth(Unit.CENTIMETRE)),
            entry("millimetre", tenth(Unit.CENTIMETRE)),
            entry("millimetres", tenth(Unit.CENTIMETRE)),
            entry("millimeter", tenth(Unit.CENTIMETRE)),
            entry("millimeters", tenth(Unit.CENTIMETRE)),
            entry("dl", tenth(Unit.LITRE)),
            entry("decilitre", tenth(Unit.LITRE)),
            entry("decilitres", tenth(Unit.LITRE)),
            entry("deciliter", tenth(Unit.LITRE)),
            entry("deciliters", tenth(Unit.LITRE)),
            entry("cl", Quantity.of(10, Unit.MILLILITRE)),
            entry("centilitre", Quantity.of(10, Unit.MILLILITRE)),
            entry("centilitres", Quantity.of(10, Unit.MILLILITRE)),
            entry("dessertspoon", Quantity.of(10, Unit.MILLILITRE)),
            entry("dessertspoons", Quantity.of(10, Unit.MILLILITRE)),
            entry("quart", Quantity.of(2, Unit.PINT)),
            entry("quarts", Quantity.of(2, Unit.PINT)));

    private static Quantity tenth(Unit unit) {
        return Quantity.of(Rationals.of(1, 10), unit);
    }

    private UnitWords() {}

    /** How much one of a unit is that has no place of its own; empty for other words. */
    static Optional<Quantity> derived(String word) {
        return Optional.ofNullable(DERIVED.get(word));
    }

    /** The unit at an index; a unit heard as two words ("tea spoon", "fluid ounces", "degrees c") is one. */
    public static Optional<Heard> at(WordStream words, int start) {
        String word = words.text(start);
        String next = words.text(start + 1);
        Optional<Heard> cut = words.on(Mechanism.CUT_UNITS) ? cut(word, next, start + 2) : Optional.empty();
        if (cut.isPresent()) {
            return cut;
        }
        if (word.equals("degrees") || word.equals("degree")) {
            return degrees(next, start + 2);
        }
        Unit unit = WORDS.get(word);
        return unit == null ? Optional.empty() : Optional.of(new Heard(unit, start + 1));
    }

    /** "tea spoon", "fluid ounces", "milli litres". */
    private static Optional<Heard> cut(String word, String next, int end) {
        if (SPOONS.contains(next) && (word.equals("tea") || word.equals("table"))) {
            return Optional.of(new Heard(word.equals("tea") ? Unit.TEASPOON : Unit.TABLESPOON, end));
        }
        if ((word.equals("fluid") || word.equals("fl")) && (next.startsWith("ounce") || next.equals("oz"))) {
            return Optional.of(new Heard(Unit.FLUID_OUNCE, end));
        }
        return word.equals("milli") && next.startsWith("lit")
                ? Optional.of(new Heard(Unit.MILLILITRE, end))
                : Optional.empty();
    }

    /** "a desert spoon of it". */
    static boolean isCutDessertspoon(WordStream words, int at) {
        return words.on(Mechanism.CUT_UNITS)
                && (words.text(at).equals("dessert") || words.text(at).equals("desert"))
                && SPOONS.contains(words.text(at + 1));
    }

    /** A spoon of no stated size: "a spoonful". */
    static boolean isSpoon(String word) {
        return SPOONS.contains(word);
    }

    /** "degrees" alone names no scale: then the number stays without a unit. */
    private static Optional<Heard> degrees(String next, int end) {
        return switch (next) {
            case "f", "fahrenheit" -> Optional.of(new Heard(Unit.FAHRENHEIT, end));
            case "c", "celsius", "centigrade" -> Optional.of(new Heard(Unit.CELSIUS, end));
            default -> Optional.empty();
        };
    }
}
