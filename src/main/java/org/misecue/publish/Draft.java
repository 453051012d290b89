package org.misecue.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a description is made from, by name; parts of it may be left out. */
record Draft(Map<String, Object> names) {

    Draft with(String name, Object value) {
        Map<String, Object> changed = new LinkedHashMap<>(names);
        changed.put(name, value);
        return new Draft(changed);
    }

    /** Whether there is anything of that name. */
    boolean has(String name) {
        Object value = names.getOrDefault(name, "");
        return !value.equals("") && !value.equals(false);
    }

    Draft without(String name) {
        return names.get(name) instanceof String ? with(name, "") : with(name, false);
    }

    /** With the first so many ingredient lines and a sentence that the list goes on. */
    Draft withIngredients(int count, String goesOn) {
        List<Map<String, Object>> kept = new ArrayList<>();
        int room = count;
        for (Map<?, ?> part : maps(ingredients(), "parts")) {
            List<Map<?, ?>> lines = maps(part, "lines");
            if (room > 0) {
                kept.add(Map.of(
                        "heading", String.valueOf(part.get("heading")),
                        "lines", lines.subList(0, Math.min(room, lines.size()))));
            }
            room -= lines.size();
        }
        return with("ingredients", Map.of("parts", kept, "goes-on", goesOn));
    }

    int ingredientLines() {
        return maps(ingredients(), "parts").stream()
                .mapToInt(part -> maps(part, "lines").size())
                .sum();
    }

    private Map<?, ?> ingredients() {
        return names.get("ingredients") instanceof Map<?, ?> map ? map : Map.of();
    }

    private static List<Map<?, ?>> maps(Map<?, ?> in, String name) {
        List<Map<?, ?>> maps = new ArrayList<>();
        if (in.get(name) instanceof List<?> list) {
            for (Object each : list) {
                if (each instanceof Map<?, ?> map) {
                    maps.add(map);
                }
            }
        }
        return maps;
    }
}
