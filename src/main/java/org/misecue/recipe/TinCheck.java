package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Spread;
import org.misecue.pantry.Weighed;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * A tin that cannot hold the batter, or is all but empty with it. Weights come from the list and the pantry; a raw batter
 * has between 0.35 g in a millilitre (whisked foam) and 1.3 (fruit cake), common practice, no source. Noted is only what
 * is out of these bounds and out of those of {@link TinRoom}: more than the largest such tin holds to the brim, or less
 * than a third of the smallest. Only one batter and its tins are reckoned: several parts with flour say nothing.
 */
final class TinCheck implements RecipeCheck {

    private static final RationalNumber DENSEST = Rationals.of(13, 10);
    private static final RationalNumber LIGHTEST = Rationals.of(35, 100);
    private static final RationalNumber THIRD = Rationals.of(1, 3);

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        List<Setting> tins = recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .toList();
        List<TinRoom> rooms =
                tins.stream().flatMap(tin -> TinRoom.of(tin).stream()).toList();
        Optional<Component> batter = batter(recipe, larder);
        if (tins.isEmpty() || rooms.size() < tins.size() || batter.isEmpty()) {
            return List.of();
        }
        Setting first = tins.get(0);
        RationalNumber high = rooms.stream().map(TinRoom::high).reduce(Rationals.ZERO, RationalNumber::add);
        return tooMuch(batter.get(), high, larder)
                .or(() -> tins.size() > 1
                        ? Optional.empty()
                        : tooLittle(batter.get(), rooms.get(0).low(), larder))
                .map(text -> List.of(new Note(Place.of(recipe.source(), first.line()), text)))
                .orElse(List.of());
    }

    /** The one part that holds flour or another grain: what is poured or pressed into the tin. */
    private static Optional<Component> batter(Recipe recipe, Larder larder) {
        List<Component> floury = recipe.components().stream()
                .filter(part -> part.lines().stream().anyMatch(line -> RaisingCheck.isFlour(line.ingredient(), larder)))
                .toList();
        return floury.size() == 1 ? Optional.of(floury.get(0)) : Optional.empty();
    }

    private static Optional<String> tooMuch(Component batter, RationalNumber room, Larder larder) {
        RationalNumber grams = batter.lines().stream()
                .filter(line -> !line.optional())
                .flatMap(line -> weight(line, larder).stream())
                .map(Spread::low)
                .reduce(Rationals.ZERO, RationalNumber::add);
        RationalNumber volume = grams.divide(DENSEST);
        return volume.compareTo(room) > 0
                ? Optional.of(
                        "the batter does not go into the tin: %s g fill %s ml at least (1.3 g in a millilitre), and such a"
                                        .formatted(whole(grams), whole(volume))
                                + " tin holds %s ml at most; check the tin and the amounts.".formatted(whole(room)))
                : Optional.empty();
    }

    private static Optional<String> tooLittle(Component batter, RationalNumber room, Larder larder) {
        boolean allKnown = batter.lines().stream()
                .filter(line -> line.quantity()
                        .filter(quantity -> quantity.dimension() == Dimension.SMIDGEN)
                        .isEmpty())
                .allMatch(line -> weight(line, larder).isPresent());
        RationalNumber grams = batter.lines().stream()
                .flatMap(line -> weight(line, larder).stream())
                .map(Spread::high)
                .reduce(Rationals.ZERO, RationalNumber::add);
        RationalNumber volume = grams.divide(LIGHTEST);
        return allKnown && volume.compareTo(room.multiply(THIRD)) < 0
                ? Optional.of(
                        "the tin is large for the batter: %s g fill %s ml at most (0.35 g in a millilitre), and such a tin"
                                        .formatted(whole(grams), whole(volume))
                                + " holds %s ml at least; check the tin and the amounts.".formatted(whole(room)))
                : Optional.empty();
    }

    private static Optional<Spread> weight(IngredientLine line, Larder larder) {
        return Stream.of(line.quantity(), line.alternative())
                .flatMap(Optional::stream)
                .flatMap(
                        quantity -> larder
                                .find(line.ingredient())
                                .flatMap(known -> Weighing.weighed(quantity, known, Household.METRIC))
                                .stream())
                .map(Weighed::spread)
                .filter(spread -> spread.high().signum() > 0)
                .findFirst();
    }

    private static String whole(RationalNumber value) {
        return Rationals.rounded(value, 0).toPlainString();
    }
}
