package org.misecue.publish;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A description in its parts, which are printed in the order of {@link Part} with an empty line between them. */
record Draft(Map<Part, List<String>> parts) {

    enum Part {
        TITLE,
        FIGURES,
        INGREDIENTS,
        ALLERGENS,
        UNSAID,
        METHOD,
        CHAPTERS
    }

    static Draft empty() {
        return new Draft(Map.of());
    }

    Draft with(Part part, List<String> lines) {
        Map<Part, List<String>> changed = new EnumMap<>(Part.class);
        changed.putAll(parts);
        changed.put(part, lines);
        return new Draft(changed);
    }

    Draft without(Part part) {
        return with(part, List.of());
    }

    List<String> lines(Part part) {
        return parts.getOrDefault(part, List.of());
    }

    String text() {
        return parts.values().stream()
                .filter(lines -> !lines.isEmpty())
                .map(lines -> String.join("\n", lines))
                .collect(Collectors.joining("\n\n", "", "\n"));
    }
}
