package org.misecue.compare;

import java.util.Map;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** What goes on during a time, and the words that tell it; words that fit several purposes fit each of them less well. */
enum Purpose {
    BAKE(Map.of(Kind.FOR_BAKING, 1.0, Kind.FOR_COOKING, 0.8)),
    PROVE(Map.of(
            Kind.FOR_PROVING,
            1.0,
            Kind.FOR_LEAVING,
            0.6,
            Kind.FOR_COVERING,
            0.8,
            Kind.FOR_RESTING,
            0.6,
            Kind.FOR_CHILLING,
            0.5)),
    CHILL(Map.of(Kind.FOR_CHILLING, 1.0, Kind.FOR_LEAVING, 0.6, Kind.FOR_COVERING, 0.75, Kind.FOR_RESTING, 0.5)),
    REST(Map.of(
            Kind.FOR_RESTING,
            1.0,
            Kind.FOR_LEAVING,
            0.6,
            Kind.FOR_COVERING,
            0.75,
            Kind.FOR_CHILLING,
            0.5,
            Kind.FOR_PROVING,
            0.6)),
    COOL(Map.of(Kind.FOR_COOLING, 1.0, Kind.FOR_LEAVING, 0.6, Kind.FOR_RESTING, 0.6)),
    SIMMER(Map.of(Kind.FOR_SIMMERING, 1.0, Kind.FOR_COOKING, 0.8)),
    SOAK(Map.of(Kind.FOR_SOAKING, 1.0, Kind.FOR_LEAVING, 0.6, Kind.FOR_COVERING, 0.75, Kind.FOR_RESTING, 0.5)),
    /** The recipe does not tell what goes on, but it goes on for long. */
    UNTOLD(Map.of(
            Kind.FOR_LEAVING,
            0.8,
            Kind.FOR_RESTING,
            0.8,
            Kind.FOR_COOLING,
            0.7,
            Kind.FOR_CHILLING,
            0.6,
            Kind.FOR_PROVING,
            0.6,
            Kind.FOR_SOAKING,
            0.7,
            Kind.FOR_COOKING,
            0.7,
            Kind.FOR_SIMMERING,
            0.8)),
    TOAST(Map.of(Kind.FOR_TOASTING, 1.0, Kind.FOR_BAKING, 0.8, Kind.FOR_COOKING, 0.8)),
    WORK(Map.of(Kind.FOR_WORKING, 1.0, Kind.FOR_TOASTING, 0.8)),
    /** Keeping, waiting, travelling: nothing that a recipe sets. */
    ELSEWHERE(Map.of(Kind.FOR_ELSEWHERE, 1.0));

    private final Map<Kind, Double> words;

    Purpose(Map<Kind, Double> words) {
        this.words = words;
    }

    /** By the technique that the recipe names around the time. */
    static Purpose of(Setting setting) {
        return switch (setting.what()) {
            case "bake", "heat-oven" -> BAKE;
            case "prove" -> PROVE;
            case "chill", "set" -> CHILL;
            case "rest" -> REST;
            case "" -> isLong(setting.quantity()) ? UNTOLD : REST;
            case "cool", "unmould" -> COOL;
            case "simmer", "boil", "fry", "caramelise", "melt" -> SIMMER;
            case "toast" -> TOAST;
            case "soak", "bloom" -> SOAK;
            default -> isLong(setting.quantity()) ? UNTOLD : WORK;
        };
    }

    /** Longer than anybody stirs. */
    private static boolean isLong(Quantity time) {
        return time.leastInBase(Household.METRIC)
                .filter(base -> base.compareTo(Unit.MINUTE.toBase(Rationals.of(25), Household.METRIC)) >= 0)
                .isPresent();
    }

    /** How well a word that fits this purpose best is heard around a time. */
    double named(SpokenQuantity said, Surroundings around) {
        return words.entrySet().stream()
                .filter(entry -> entry.getValue() == 1.0)
                .mapToDouble(entry -> around.weight(said, entry.getKey()))
                .max()
                .orElse(0);
    }

    /** How well the words around a time speak of this purpose; several words for it make it surer. */
    double fits(SpokenQuantity said, Surroundings around) {
        double against = words.entrySet().stream()
                .mapToDouble(entry -> 1 - entry.getValue() * around.weight(said, entry.getKey()))
                .sorted()
                .reduce(1, (one, other) -> one * other);
        return 1 - against;
    }
}
