package org.misecue.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import tech.units.indriya.function.RationalNumber;

/**
 * From the tin of a recipe to another one.
 *
 * @param from the recipe's, the first that can be reckoned
 * @param to the one that is wanted
 * @param place where the recipe names its own
 * @param others whether the recipe names more tins
 */
record TinChange(Tin from, Tin to, Place place, boolean others) {

    private static final RationalNumber HIGHER = Rationals.of(115, 100);
    private static final RationalNumber LOWER = Rationals.of(87, 100);

    /** @throws BadInput if the recipe names no tin, or none that can be reckoned */
    static TinChange of(Recipe recipe, Tin wanted) {
        List<Setting> pans = recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .toList();
        if (pans.isEmpty()) {
            throw new BadInput(
                    Place.of(recipe.source()),
                    "the recipe states no tin to scale from; add a line such as “Tin: 20 cm round”, or scale by"
                            + " times.");
        }
        Optional<Setting> pan =
                pans.stream().filter(each -> TinReader.of(each).isPresent()).findFirst();
        Tin written = pan.flatMap(TinReader::of)
                .orElseThrow(() -> new BadInput(
                        Place.of(recipe.source(), pans.get(0).line()),
                        "this tin has no base that can be reckoned; write it as 20 cm round, 20 cm square, 23 × 13"
                                + " cm or 1.5 litre, or scale by times."));
        boolean others = pans.stream()
                        .flatMap(each -> TinReader.of(each).stream())
                        .distinct()
                        .count()
                > 1;
        return new TinChange(
                written, wanted, Place.of(recipe.source(), pan.orElseThrow().line()), others);
    }

    RationalNumber factor() {
        return from.factorTo(to);
    }

    /** By what it is reckoned, and what that leaves open; nothing for the same tin again. */
    List<Note> notes() {
        List<Note> notes = new ArrayList<>();
        if (!from.equals(to)) {
            notes.add(new Note(place, "from %s to %s %s".formatted(from, to, how())));
        }
        if (others) {
            notes.add(new Note(
                    place, "the recipe names more than one tin; the batch is reckoned from %s.".formatted(from)));
        }
        return notes;
    }

    private String how() {
        String filled = to.count() == 1 ? "the tin is" : "the tins are";
        return switch (from.measureTo(to)) {
            case VOLUME -> "by volume: %s filled to the same share of the depth.".formatted(filled);
            case AREA ->
                from.depth().isPresent() || to.depth().isPresent()
                        ? ("by the area of the base, for only one depth is stated: %s filled as high as the recipe fills"
                                        + " its own.")
                                .formatted(filled)
                        : "by the area of the base: %s filled as high as the recipe fills its own.".formatted(filled);
            case NAME -> "by the size they are sold as.";
            case USUAL ->
                ("by what such tins usually hold, %s ml and %s ml (common practice, no source); weigh the water that each"
                                + " holds and give both as litres to be sure.")
                        .formatted(whole(from.taken()), whole(to.taken()));
        };
    }

    /** How the bake changes, which no factor tells. */
    Optional<String> time() {
        if (from.equals(to)) {
            return Optional.empty();
        }
        Optional<RationalNumber> height = height();
        if (height.filter(value -> value.compareTo(HIGHER) > 0).isPresent()) {
            return Optional.of(
                    ("the batter stands about × %s as high: it bakes longer, in an oven 10 to 20 °C cooler so that the edges"
                                    + " do not dry out (common practice, no source).")
                            .formatted(places(height.get())));
        }
        if (height.filter(value -> value.compareTo(LOWER) < 0).isPresent()) {
            return Optional.of(
                    ("the batter stands only about × %s as high: it is done sooner, so look well before the stated time"
                                    + " (common practice, no source).")
                            .formatted(places(height.get())));
        }
        boolean smaller = each(to).compareTo(each(from).multiply(LOWER)) < 0;
        boolean larger = each(to).compareTo(each(from).multiply(HIGHER)) > 0;
        if (smaller) {
            return Optional.of(
                    "smaller tins are done sooner, so look before the stated time (common practice, no source).");
        }
        return larger
                ? Optional.of(
                        "a larger tin takes somewhat longer, so test before it comes out (common practice, no source).")
                : Optional.empty();
    }

    /** The new height of the batter as a share of the old. */
    private Optional<RationalNumber> height() {
        return from.area()
                .flatMap(old -> to.area().map(now -> factor().multiply(old).divide(now)));
    }

    private static RationalNumber each(Tin tin) {
        return tin.taken().divide(Rationals.of(tin.count()));
    }

    private static String places(RationalNumber value) {
        return Rationals.rounded(value, 2).toPlainString();
    }

    private static String whole(RationalNumber value) {
        return Rationals.rounded(value, 0).toPlainString();
    }
}
