package org.misecue.scale;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import tech.units.indriya.function.RationalNumber;

/**
 * Where a batch may not fit: its tins, the ovens, the mixer; and how the bake changes with it. All bounds are common
 * practice, no source.
 */
final class RoomWarnings {

    private static final Quantity USUAL_BOWL = Quantity.of(Rationals.of("4.5"), Unit.LITRE);
    private static final RationalNumber HALF = Rationals.of(1, 2);
    /** How many tins a household oven bakes evenly at once. */
    private static final RationalNumber AT_ONCE = Rationals.of(2);

    private final ScaledRecipe scaled;
    private final ScaleRules rules;
    private final List<Note> notes = new ArrayList<>();

    private RoomWarnings(ScaledRecipe scaled, ScaleRules rules) {
        this.scaled = scaled;
        this.rules = rules;
    }

    /** Nothing for the written batch in its own tin. */
    static List<Note> of(ScaledRecipe scaled, Optional<TinChange> tins, ScaleRules rules) {
        RoomWarnings warnings = new RoomWarnings(scaled, rules);
        tins.flatMap(TinChange::time)
                .ifPresent(
                        time -> warnings.notes.add(new Note(tins.orElseThrow().place(), time)));
        if (!scaled.factor().equals(Rationals.ONE)) {
            warnings.clock();
            if (tins.isEmpty()) {
                warnings.tins();
            }
            warnings.mixer();
        }
        return List.copyOf(warnings.notes);
    }

    private void clock() {
        add(
                place(Setting.Kind.OVEN_TEMPERATURE)
                        .or(() -> place(Setting.Kind.DURATION))
                        .orElse(Place.of(scaled.recipe().source())),
                "baking time and temperature are not scaled; watch the bake, not the clock (common practice, no"
                        + " source).");
    }

    private void tins() {
        Optional<Setting> pan = scaled.recipe().allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .findFirst();
        if (pan.isEmpty()) {
            return;
        }
        Place place = Place.of(scaled.recipe().source(), pan.get().line());
        add(
                place,
                "tins are not scaled: this batch needs × %s the tin's area, or as many tins."
                        .formatted(Rationals.rounded(scaled.factor(), 2).toPlainString()));
        RationalNumber tins =
                up(scaled.factor().multiply(Rationals.of(Math.max(1, pan.get().count()))));
        RationalNumber rounds = up(tins.divide(AT_ONCE.multiply(Rationals.of(rules.ovens()))));
        if (scaled.factor().compareTo(Rationals.ONE) > 0 && rounds.compareTo(Rationals.ONE) > 0) {
            add(
                    place,
                    ("%s tins bake in %s rounds, two at a time in %s; mix each round when the oven is free, for batter"
                                    + " with a raising agent or whisked eggs waits badly (common practice, no source).")
                            .formatted(whole(tins), whole(rounds), ovens()));
        }
    }

    private String ovens() {
        return rules.ovens() == 1 ? "one oven" : "each of " + rules.ovens() + " ovens";
    }

    /** A bowl takes half of what it holds before anything is whisked up or the dough hook throws it out. */
    private void mixer() {
        RationalNumber bowl =
                rules.mixer().orElse(USUAL_BOWL).leastInBase(Household.METRIC).orElseThrow();
        RationalNumber most = bowl.multiply(HALF);
        Map<String, RationalNumber> parts = new LinkedHashMap<>();
        for (WeighedLine line : scaled.lines()) {
            line.grams().ifPresent(grams -> parts.merge(line.component(), grams, RationalNumber::add));
        }
        parts.forEach((part, grams) -> {
            if (grams.compareTo(most) > 0 && isMixed(part)) {
                add(
                        Place.of(scaled.recipe().source()),
                        "%s is %s g in all, more than half of %s: mix it in %s lots (common practice, no source)."
                                .formatted(
                                        part.isEmpty() ? "this batch" : "the " + part,
                                        whole(grams),
                                        rules.mixer()
                                                .map(own -> "the mixer's " + QuantityWriter.text(own))
                                                .orElse("a household mixer's " + QuantityWriter.text(USUAL_BOWL)),
                                        whole(up(grams.divide(most)))));
            }
        });
    }

    /** What goes into a mixer holds flour, eggs, butter or cream; fruit and syrups do not. */
    private boolean isMixed(String component) {
        return scaled.lines().stream()
                .filter(line -> line.component().equals(component))
                .anyMatch(line -> line.written()
                        .ingredient()
                        .matches("(?i).*\\b(?:flours?|eggs?|whites?|yolks?|butter|cream|mascarpone)\\b.*"));
    }

    private Optional<Place> place(Setting.Kind kind) {
        return scaled.recipe().allSettings().stream()
                .filter(setting -> setting.kind() == kind)
                .findFirst()
                .map(setting -> Place.of(scaled.recipe().source(), setting.line()));
    }

    private void add(Place place, String sentence) {
        notes.add(new Note(place, sentence));
    }

    private static RationalNumber up(RationalNumber value) {
        RationalNumber floor = Rationals.floor(value);
        return floor.equals(value) ? value : floor.add(Rationals.ONE);
    }

    private static String whole(RationalNumber value) {
        return Rationals.rounded(value, 0).toPlainString();
    }
}
