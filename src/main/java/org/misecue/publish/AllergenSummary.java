package org.misecue.publish;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.misecue.pantry.Allergen;

/** Collects the allergens of all lines for "Contains: …" and "Check the label of: …". Never says what is not there. */
final class AllergenSummary {

    private final Labels labels;

    private final Map<Allergen, Set<String>> contains = new EnumMap<>(Allergen.class);
    private final Set<String> elsewhere = new TreeSet<>();
    private final Map<String, Set<Allergen>> check = new LinkedHashMap<>();

    AllergenSummary(Labels labels) {
        this.labels = labels;
    }

    void add(String ingredient, AllergenLine line) {
        for (AllergenLine.Named named : line.contains()) {
            Set<String> names = contains.computeIfAbsent(named.allergen(), any -> new LinkedHashSet<>());
            if (!named.called().isEmpty()) {
                names.add(named.called());
            }
        }
        elsewhere.addAll(line.elsewhere());
        if (!line.check().isEmpty()) {
            check.computeIfAbsent(ingredient, any -> new TreeSet<>()).addAll(line.check());
        }
    }

    /** @param honey whether there is any: not for babies under 12 months, not even cooked (INSPQ) */
    List<String> lines(boolean honey) {
        List<String> lines = new ArrayList<>();
        if (!contains.isEmpty()) {
            lines.add(labels.text(
                    "contains",
                    "names",
                    contains.entrySet().stream()
                            .map(entry -> named(entry.getKey(), entry.getValue()))
                            .collect(Collectors.joining(", "))));
        }
        if (!elsewhere.isEmpty()) {
            lines.add(labels.text(
                    "contains-elsewhere",
                    "names",
                    elsewhere.stream().map(labels::allergen).collect(Collectors.joining(", "))));
        }
        if (!check.isEmpty()) {
            lines.add(labels.text(
                    "check-label",
                    "names",
                    check.entrySet().stream()
                            .map(entry -> entry.getKey()
                                    + entry.getValue().stream()
                                            .map(labels::allergen)
                                            .collect(Collectors.joining(", ", " (", ")")))
                            .collect(Collectors.joining("; "))));
        }
        if (honey) {
            lines.add(labels.text("honey"));
        }
        lines.add(labels.text("label-first"));
        return lines;
    }

    private String named(Allergen allergen, Set<String> names) {
        if (names.isEmpty()) {
            return labels.allergenInFull(allergen);
        }
        String own = labels.and(names);
        String group = labels.allergen(allergen);
        boolean finer = allergen == Allergen.GLUTEN || allergen == Allergen.NUTS && !own.equals(group);
        return finer ? own + " (" + group + ")" : own;
    }
}
