package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * Oven figures that do not fit each other. A fan oven is set about 20 °C lower (NSW Health conversion chart); recipes
 * round to tens, so 10 to 30 °C pass. Degrees Fahrenheit and gas marks may be off by what dials round: 12 °C (gas-mark
 * tables differ by as much).
 */
final class OvenCheck implements RecipeCheck {

    private static final RationalNumber LEAST = Rationals.of(9);
    private static final RationalNumber MOST = Rationals.of(31);
    private static final RationalNumber DIAL = Rationals.of(12);

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        List<Note> notes = new ArrayList<>();
        for (Setting oven : recipe.allSettings()) {
            if (oven.kind() == Setting.Kind.OVEN_TEMPERATURE) {
                sentence(oven).ifPresent(text -> notes.add(new Note(Place.of(recipe.source(), oven.line()), text)));
            }
        }
        return List.copyOf(notes);
    }

    private static Optional<String> sentence(Setting oven) {
        Quantity written = oven.quantity();
        Optional<Quantity> fan = oven.fan().filter(quantity -> !quantity.equals(written));
        Optional<String> misfit = fan.flatMap(quantity -> celsius(written)
                .flatMap(still -> celsius(quantity).map(still::subtract))
                .filter(cooler -> cooler.compareTo(LEAST) < 0 || cooler.compareTo(MOST) > 0)
                .map(cooler -> "%s and %s fan do not fit: a fan oven is set about 20 °C lower; check both figures."
                        .formatted(QuantityWriter.text(written), QuantityWriter.text(quantity))));
        return misfit.or(() -> oven.also().stream()
                .filter(other -> isFar(written, other))
                .findFirst()
                .map(other -> "%s and %s are not the same heat (%s is %s °C); check both figures."
                        .formatted(
                                QuantityWriter.text(written),
                                QuantityWriter.text(other),
                                QuantityWriter.text(other),
                                celsius(other)
                                        .map(value ->
                                                Rationals.rounded(value, 0).toPlainString())
                                        .orElse("unknown"))));
    }

    private static boolean isFar(Quantity one, Quantity other) {
        boolean exact = one.amount().least().equals(one.amount().most())
                && other.amount().least().equals(other.amount().most());
        return exact
                && one.unit() != other.unit()
                && celsius(one)
                        .flatMap(here ->
                                celsius(other).map(there -> here.subtract(there).abs()))
                        .filter(apart -> apart.compareTo(DIAL) > 0)
                        .isPresent();
    }

    private static Optional<RationalNumber> celsius(Quantity quantity) {
        return quantity.in(Unit.CELSIUS, Household.METRIC).amount().least();
    }
}
