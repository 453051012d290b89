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

    private final Map<Allergen, Set<String>> contains = new EnumMap<>(Allergen.class);
    private final Set<String> elsewhere = new TreeSet<>();
    private final Map<String, Set<Allergen>> check = new LinkedHashMap<>();

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
            lines.add(contains.entrySet().stream()
                    .map(entry -> named(entry.getKey(), entry.getValue()))
                    .collect(Collectors.joining(", ", "Contains: ", ".")));
        }
        if (!elsewhere.isEmpty()) {
            lines.add("Contains, by the lists of the US, Australia and New Zealand: %s."
                    .formatted(String.join(", ", elsewhere)));
        }
        if (!check.isEmpty()) {
            lines.add(check.entrySet().stream()
                    .map(entry -> entry.getKey()
                            + entry.getValue().stream()
                                    .map(AllergenLine::labelled)
                                    .collect(Collectors.joining(", ", " (", ")")))
                    .collect(Collectors.joining("; ", "Check the label of: ", ".")));
        }
        if (honey) {
            lines.add("Contains honey, which is not for babies under 12 months, not even cooked.");
        }
        lines.add("Products differ: the label on your own packet comes first.");
        return lines;
    }

    private static String named(Allergen allergen, Set<String> names) {
        if (names.isEmpty()) {
            return allergen.label();
        }
        String own = String.join(" and ", names);
        return switch (allergen) {
            case GLUTEN -> own + " (gluten)";
            case NUTS -> own.equals("nuts") ? own : own + " (nuts)";
            default -> own;
        };
    }
}
