package org.misecue.publish;

import com.ibm.icu.number.LocalizedNumberFormatter;
import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.util.MeasureUnit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.misecue.quantity.Amount;
import org.misecue.quantity.CupsAndSpoons;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * Amounts in another language: signs, plurals and decimal commas by ICU, fractions of spoons and cups as everywhere. Words
 * of the recipe itself, such as a hedge that is not known here, stay as they are.
 */
final class ForeignAmounts implements Amounts {

    private final Labels labels;
    private final LocalizedNumberFormatter numbers;

    ForeignAmounts(Labels labels) {
        this.labels = labels;
        this.numbers = NumberFormatter.withLocale(labels.language());
    }

    @Override
    public String text(Quantity quantity) {
        if (quantity.amount() instanceof Amount.Unstated unstated) {
            return unstated.words();
        }
        if (quantity.amount() instanceof Amount.Approximate about) {
            return hedged(about.hedge(), text(new Quantity(about.about(), quantity.unit())));
        }
        Unit shown = QuantityWriter.unitShown(quantity);
        Quantity whole = shown == quantity.unit() ? quantity : quantity.in(shown, Household.METRIC);
        RationalNumber from = whole.amount().least().orElseThrow();
        RationalNumber to = whole.amount().most().orElseThrow();
        String low = number(from, shown);
        String high = number(to, shown);
        return withUnit(low.equals(high) ? low : low + "–" + high, to, shown);
    }

    @Override
    public String spoons(Quantity quantity, Household household) {
        List<Quantity> parts = CupsAndSpoons.parts(quantity, household);
        if (parts.size() == 1 && parts.get(0).equals(quantity)) {
            return text(quantity);
        }
        String measures = parts.stream().map(this::text).collect(Collectors.joining(" + "));
        return quantity.amount() instanceof Amount.Approximate about ? hedged(about.hedge(), measures) : measures;
    }

    private String hedged(String hedge, String amount) {
        String key = hedge.isBlank() ? "about" : hedge.toLowerCase(Locale.ROOT);
        return switch (key) {
            case "about", "approx", "approx.", "approximately", "around", "roughly" ->
                labels.text("hedge.about") + " " + amount;
            case "heaped", "heaping" -> labels.text("hedge.heaped", "amount", amount);
            case "scant" -> labels.text("hedge.scant", "amount", amount);
            default -> hedge + " " + amount;
        };
    }

    /** Figures with the language's decimal sign; a fraction is the same everywhere. */
    private String number(RationalNumber value, Unit unit) {
        String figures = QuantityWriter.number(value, unit);
        return figures.matches("-?\\d+(\\.\\d+)?") ? plain(new BigDecimal(figures)) : figures;
    }

    private String plain(BigDecimal value) {
        return spaced(numbers.format(value).toString());
    }

    private String withUnit(String number, RationalNumber count, Unit unit) {
        BigDecimal value = new BigDecimal(QuantityWriter.number(count, Unit.GRAM));
        Optional<MeasureUnit> known = icu(unit);
        if (known.isPresent()) {
            String formatted = spaced(numbers.unit(known.get())
                    .unitWidth(NumberFormatter.UnitWidth.SHORT)
                    .format(value)
                    .toString());
            return formatted.replace(plain(value), number);
        }
        return switch (unit) {
            case PINCH, STICK ->
                number + "\u00a0" + labels.text(unit == Unit.PINCH ? "pinch" : "stick", "count", value);
            case GAS_MARK -> labels.text("gas-mark", "number", number);
            default -> number;
        };
    }

    /** One kind of space that does not break, which every font has. */
    private static String spaced(String text) {
        return text.replace('\u202f', '\u00a0');
    }

    private static Optional<MeasureUnit> icu(Unit unit) {
        return switch (unit) {
            case GRAM -> Optional.of(MeasureUnit.GRAM);
            case KILOGRAM -> Optional.of(MeasureUnit.KILOGRAM);
            case MILLILITRE -> Optional.of(MeasureUnit.MILLILITER);
            case LITRE -> Optional.of(MeasureUnit.LITER);
            case TEASPOON -> Optional.of(MeasureUnit.TEASPOON);
            case TABLESPOON -> Optional.of(MeasureUnit.TABLESPOON);
            case CUP -> Optional.of(MeasureUnit.CUP);
            case FLUID_OUNCE -> Optional.of(MeasureUnit.FLUID_OUNCE);
            case PINT -> Optional.of(MeasureUnit.PINT);
            case OUNCE -> Optional.of(MeasureUnit.OUNCE);
            case POUND -> Optional.of(MeasureUnit.POUND);
            case CELSIUS -> Optional.of(MeasureUnit.CELSIUS);
            case FAHRENHEIT -> Optional.of(MeasureUnit.FAHRENHEIT);
            case MINUTE -> Optional.of(MeasureUnit.MINUTE);
            case HOUR -> Optional.of(MeasureUnit.HOUR);
            case CENTIMETRE -> Optional.of(MeasureUnit.CENTIMETER);
            case INCH -> Optional.of(MeasureUnit.INCH);
            case STICK, EACH, PINCH, GAS_MARK -> Optional.empty();
        };
    }
}
