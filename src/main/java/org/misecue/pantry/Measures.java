package org.misecue.pantry;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** The weights of one row: its grams, each with the row's own spread where it has one, or the usual one of its kind. */
final class Measures {

    private static final Set<Unit> MEASURES =
            EnumSet.of(Unit.CUP, Unit.TABLESPOON, Unit.TEASPOON, Unit.STICK, Unit.EACH);

    private final YamlRow row;
    private final Optional<String> usualSource;
    private final Map<Unit, RationalNumber> grams = new EnumMap<>(Unit.class);
    private final Map<Unit, List<RationalNumber>> ranges = new EnumMap<>(Unit.class);

    /** @param usualSource of figures without one; empty where each must name its own */
    Measures(YamlRow row, Optional<String> usualSource) {
        this.row = row;
        this.usualSource = usualSource;
        row.numbers("grams").forEach((code, value) -> grams.put(unit("grams", code), value));
        row.ranges("spread").forEach((code, value) -> ranges.put(unit("spread", code), value));
    }

    private Unit unit(String key, String code) {
        return Unit.ofCode(code)
                .filter(MEASURES::contains)
                .orElseThrow(() -> row.bad(key, "“" + key + "” are of a cup, tbsp, tsp, stick or each, not " + code));
    }

    List<Weight> weights(Kind kind) {
        String source = grams.isEmpty() && !row.has("weighed") ? "" : source("weighed");
        String from = ranges.isEmpty() && !row.has("spread-from") ? "" : source("spread-from");
        List<Weight> weights = new ArrayList<>();
        grams.forEach((unit, value) -> weights.add(new Weight(unit, value, spread(unit, value, kind, from), source)));
        return List.copyOf(weights);
    }

    private String source(String key) {
        return row.textIfAny(key).or(() -> usualSource).orElseGet(() -> row.text(key));
    }

    private Spread spread(Unit unit, RationalNumber value, Kind kind, String from) {
        List<RationalNumber> own = ranges.get(unit);
        if (own != null) {
            return held(unit, value, own, from);
        }
        if (unit.dimension() == Dimension.VOLUME) {
            return ofAnotherMeasure(value, from).orElseGet(() -> kind.around(value));
        }
        return Kind.named("piece").around(value);
    }

    /** A spoonful is sifted or packed as the cup is. */
    private Optional<Spread> ofAnotherMeasure(RationalNumber value, String from) {
        return ranges.entrySet().stream()
                .filter(entry -> entry.getKey().dimension() == Dimension.VOLUME && grams.containsKey(entry.getKey()))
                .findFirst()
                .map(entry -> held(entry.getKey(), other(entry.getKey()), entry.getValue(), from)
                        .times(value.divide(other(entry.getKey()))));
    }

    private RationalNumber other(Unit unit) {
        return grams.getOrDefault(unit, Rationals.ONE);
    }

    private Spread held(Unit unit, RationalNumber value, List<RationalNumber> ends, String from) {
        if (ends.get(0).compareTo(value) > 0 || ends.get(1).compareTo(value) < 0) {
            throw row.bad(
                    "spread",
                    "the “spread” of a " + unit.code() + " must hold its grams, "
                            + Rationals.decimal(value).toPlainString());
        }
        return new Spread(ends.get(0), ends.get(1), from);
    }

    /**
     * The weights of a row that was there, with these over them. A new weight of a cup or spoon stands for all cups and
     * spoons: two densities in one row would contradict each other.
     */
    List<Weight> over(List<Weight> before, Kind kind) {
        boolean newDensity = grams.keySet().stream().anyMatch(unit -> unit.dimension() == Dimension.VOLUME);
        List<Weight> weights = new ArrayList<>(weights(kind));
        for (Weight old : before) {
            boolean replaced =
                    grams.containsKey(old.unit()) || newDensity && old.unit().dimension() == Dimension.VOLUME;
            if (!replaced) {
                weights.add(respread(old));
            }
        }
        ranges.keySet().stream()
                .filter(unit -> weights.stream().noneMatch(weight -> weight.unit() == unit))
                .findFirst()
                .ifPresent(unit -> {
                    throw row.bad(
                            "spread", "“spread” is of a measure that has grams, and " + unit.code() + " has none");
                });
        return List.copyOf(weights);
    }

    private Weight respread(Weight old) {
        List<RationalNumber> own = ranges.get(old.unit());
        return own == null
                ? old
                : new Weight(
                        old.unit(),
                        old.grams(),
                        held(old.unit(), old.grams(), own, source("spread-from")),
                        old.source());
    }
}
