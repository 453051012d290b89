package org.misecue.scale;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import tech.units.indriya.function.RationalNumber;

/**
 * How many times the written batch is wanted, and what to know about that figure.
 *
 * @param value from {@link Batch#LEAST} to {@link Batch#MOST}
 * @param tins from which to which, where the batch is measured by a tin
 */
record BatchFactor(RationalNumber value, List<Note> notes, Optional<TinChange> tins) {

    /**
     * @throws BadInput if the recipe does not state the yield, tin or ingredient that the batch is measured by, or the
     *     batch is out of all bounds
     */
    static BatchFactor of(Recipe recipe, Batch batch, ScaleRules rules, Pantry pantry) {
        BatchFactor factor = unbounded(recipe, batch, rules, pantry);
        if (factor.value.compareTo(Batch.MOST) > 0 || factor.value.compareTo(Batch.LEAST) < 0) {
            throw new BadInput(
                    Place.of(recipe.source()),
                    "this batch would be × %s of the recipe, and a batch is from 0.01 to 100 times; check the figures."
                            .formatted(Rationals.decimal(factor.value).toPlainString()));
        }
        return factor;
    }

    private static BatchFactor unbounded(Recipe recipe, Batch batch, ScaleRules rules, Pantry pantry) {
        if (batch instanceof Batch.Factor factor) {
            return new BatchFactor(factor.times(), List.of(), Optional.empty());
        }
        if (batch instanceof Batch.Makes makes) {
            return byYield(recipe, makes);
        }
        if (batch instanceof Batch.InTin inTin) {
            TinChange change = TinChange.of(recipe, inTin.tin());
            return new BatchFactor(change.factor(), change.notes(), Optional.of(change));
        }
        Leftovers left = Leftovers.of(recipe, (Batch.Left) batch, rules.household(), pantry);
        return new BatchFactor(left.factor(), left.notes(), Optional.empty());
    }

    private static BatchFactor byYield(Recipe recipe, Batch.Makes makes) {
        Setting yield = recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.YIELD)
                .findFirst()
                .filter(setting -> setting.quantity().amount().least().isPresent())
                .orElseThrow(() -> new BadInput(
                        Place.of(recipe.source()),
                        "the recipe states no yield to scale from; add a line such as “Makes 12”, or scale by times."));
        Place place = Place.of(recipe.source(), yield.line());
        if (yield.quantity().amount().least().orElseThrow().signum() <= 0) {
            throw new BadInput(place, "a yield of nothing cannot be scaled; write how many it makes.");
        }
        Measured wanted = Measured.of(makes);
        Quantity written = Stream.concat(Stream.of(yield.quantity()), yield.also().stream())
                .filter(each -> each.dimension() == wanted.quantity.dimension())
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        place,
                        "the recipe makes %s, and a batch of %s is measured otherwise; give it as the recipe does, or scale by times."
                                .formatted(
                                        (QuantityWriter.text(yield.quantity()) + " " + yield.what()).strip(),
                                        QuantityWriter.text(wanted.quantity))));
        RationalNumber factor = base(wanted.quantity).divide(base(written));
        boolean same = written.dimension() != Dimension.COUNT || sameThing(wanted.what, yield.what());
        Note other = new Note(
                place,
                "the recipe makes %s %s and the batch is given in %s; they are taken to be the same."
                        .formatted(QuantityWriter.text(yield.quantity()), yield.what(), wanted.what));
        return new BatchFactor(factor, same ? List.of() : List.of(other), Optional.empty());
    }

    /** What is wanted: "18 kg" is a weight, "18 buns" a number of pieces. */
    private record Measured(Quantity quantity, String what) {

        static Measured of(Batch.Makes makes) {
            Quantity pieces = Quantity.of(makes.count(), Unit.EACH);
            return new QuantityReader()
                    .read("1 " + makes.what())
                    .filter(read -> read.quantity().dimension() == Dimension.MASS
                            || read.quantity().dimension() == Dimension.VOLUME)
                    .map(WrittenQuantity::quantity)
                    .map(one -> new Measured(one.times(makes.count()), ""))
                    .orElseGet(() -> new Measured(pieces, makes.what()));
        }
    }

    private static RationalNumber base(Quantity quantity) {
        return quantity.leastInBase(Household.METRIC).orElse(Rationals.ZERO);
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
}
