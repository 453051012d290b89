package org.misecue.scale;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import tech.units.indriya.function.RationalNumber;

/** How many times the written batch is wanted, and what to know about that figure. */
record BatchFactor(RationalNumber value, List<Note> notes) {

    /** @throws BadInput if the recipe does not state the yield, tin or ingredient that the batch is measured by */
    static BatchFactor of(Recipe recipe, Batch batch, ScaleRules rules, Pantry pantry) {
        if (batch instanceof Batch.Factor factor) {
            return new BatchFactor(factor.times(), List.of());
        }
        if (batch instanceof Batch.Makes makes) {
            return byYield(recipe, makes);
        }
        if (batch instanceof Batch.InTin inTin) {
            return byTin(recipe, inTin.tin());
        }
        return new BatchFactor(Leftovers.factor(recipe, (Batch.Left) batch, rules.household(), pantry), List.of());
    }

    private static BatchFactor byYield(Recipe recipe, Batch.Makes makes) {
        Setting yield = setting(recipe, Setting.Kind.YIELD)
                .filter(setting -> setting.quantity().amount().least().isPresent())
                .orElseThrow(() -> new BadInput(
                        Place.of(recipe.source()),
                        "the recipe states no yield to scale from; add a line such as “Makes 12”, or scale by times."));
        RationalNumber written = yield.quantity().amount().least().orElseThrow();
        if (written.signum() <= 0) {
            throw new BadInput(placeOf(recipe, yield), "a yield of nothing cannot be scaled; write how many it makes.");
        }
        RationalNumber factor = makes.count().divide(written);
        if (sameThing(makes.what(), yield.what())) {
            return new BatchFactor(factor, List.of());
        }
        Note other = new Note(
                placeOf(recipe, yield),
                "the recipe makes %s %s and the batch is given in %s; they are taken to be the same."
                        .formatted(QuantityWriter.text(yield.quantity()), yield.what(), makes.what()));
        return new BatchFactor(factor, List.of(other));
    }

    private static boolean sameThing(String wanted, String written) {
        return wanted.isBlank()
                || written.isBlank()
                || singular(written).endsWith(singular(wanted))
                || singular(wanted).endsWith(singular(written));
    }

    private static String singular(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceFirst("(?<=..)e?s$", "");
    }

    private static BatchFactor byTin(Recipe recipe, Tin wanted) {
        Setting first = setting(recipe, Setting.Kind.PAN)
                .orElseThrow(() -> new BadInput(
                        Place.of(recipe.source()),
                        "the recipe states no tin to scale from; add a line such as “Tin: 20 cm round”, or scale by"
                                + " times."));
        Setting pan = settings(recipe, Setting.Kind.PAN)
                .filter(setting -> TinReader.of(setting).isPresent())
                .findFirst()
                .orElse(first);
        Tin written = TinReader.of(pan)
                .orElseThrow(() -> new BadInput(
                        placeOf(recipe, pan),
                        "this tin has no base that can be reckoned; write it as 20 cm round, 20 cm square or 23 × 13"
                                + " cm, or scale by times."));
        RationalNumber factor = written.factorTo(wanted);
        if (written.depth().isPresent() && wanted.depth().isPresent() || factor.equals(Rationals.ONE)) {
            return new BatchFactor(factor, List.of());
        }
        Note filled = new Note(
                placeOf(recipe, pan),
                "from %s to %s by the area of the base: the %s is filled as high as the recipe fills its own."
                        .formatted(written, wanted, wanted.count() == 1 ? "tin" : "tins"));
        return new BatchFactor(factor, List.of(filled));
    }

    private static Optional<Setting> setting(Recipe recipe, Setting.Kind kind) {
        return settings(recipe, kind).findFirst();
    }

    private static Stream<Setting> settings(Recipe recipe, Setting.Kind kind) {
        return recipe.allSettings().stream().filter(setting -> setting.kind() == kind);
    }

    private static Place placeOf(Recipe recipe, Setting setting) {
        return Place.of(recipe.source(), setting.line());
    }
}
