package org.misecue.compare;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.Setting;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Which written time a spoken time is about: by the words around it and by the step that is on. */
final class DurationMatch {

    private static final int BEFORE = 22;
    private static final int AFTER = 12;
    private static final double ENOUGH = 2.2;

    private static final Map<String, Set<String>> WORDS = Map.ofEntries(
            Map.entry("bake", Words.set("bake baked baking oven ovens golden skewer timer browned peek peeping")),
            Map.entry(
                    "prove",
                    Words.set("prove proving rise rising risen doubled proof puffy airing cover covered puffed")),
            Map.entry("chill", Set.of("chill", "chilled", "chilling", "fridge", "freezer", "cold", "set", "firm")),
            Map.entry("rest", Words.set("rest resting leave sit stand left sits swell hydrate")),
            Map.entry("cool", Words.set("cool cooling cooled rack leave sat sit turn tin handle")),
            Map.entry("simmer", Words.set("simmer simmering boil bubble bubbling hob pan heat reduce")),
            Map.entry("soak", Set.of("soak", "soaking", "soaked", "leave", "plump")),
            Map.entry("knead", Set.of("knead", "kneading", "mixer", "machine")));

    private DurationMatch() {}

    static Optional<Setting> best(SpokenQuantity said, List<Setting> durations, Hearing heard) {
        Setting best = null;
        double most = ENOUGH;
        for (Setting setting : durations) {
            double score = score(said, setting, heard);
            if (score >= most && (best == null || score > most)) {
                best = setting;
                most = score;
            }
        }
        return Optional.ofNullable(best);
    }

    private static double score(SpokenQuantity said, Setting setting, Hearing heard) {
        int away = Math.abs(heard.stepAt(said.start()) - setting.step());
        double score = away == 0 ? 2.5 : away == 1 ? 1.5 : 0;
        Set<String> telling = telling(setting, heard);
        for (int at = said.start() - BEFORE; at < said.end() + AFTER; at++) {
            if (at >= said.start() && at < said.end()) {
                continue;
            }
            if (telling.contains(heard.words.text(at))) {
                int distance = at < said.start() ? said.start() - at : at - said.end() + 1;
                score += distance <= 8 ? 1.2 : 0.5;
            }
        }
        return score + magnitude(said, setting, heard);
    }

    /** The words that go with the kind of time, and those of the step that states it. */
    private static Set<String> telling(Setting setting, Hearing heard) {
        Set<String> telling = new HashSet<>(Words.content(setting.what()));
        Words.content(setting.what()).forEach(word -> telling.addAll(WORDS.getOrDefault(word, Set.of())));
        if (setting.step() > 0) {
            telling.addAll(
                    Words.content(heard.recipe.steps().get(setting.step() - 1).text()));
        }
        telling.removeAll(Set.of("minute", "hour", "in", "out"));
        return telling;
    }

    private static double magnitude(SpokenQuantity said, Setting setting, Hearing heard) {
        double a = base(said.quantity().orElseThrow(), heard);
        double b = base(setting.quantity(), heard);
        if (a <= 0 || b <= 0) {
            return -9;
        }
        double ratio = Math.max(a / b, b / a);
        return ratio > 4.5 ? -4 : -0.8 * Math.log(ratio) / Math.log(2);
    }

    private static double base(Quantity quantity, Hearing heard) {
        return quantity.leastInBase(heard.household)
                .map(RationalNumber::doubleValue)
                .orElse(0.0);
    }
}
