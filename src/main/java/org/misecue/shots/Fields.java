package org.misecue.shots;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** The fields of one mapping, read strictly: what is unknown, missing or of another kind stops the work at its place. */
final class Fields {

    private final Yaml.Mapping mapping;

    private Fields(Yaml.Mapping mapping) {
        this.mapping = mapping;
    }

    static Fields of(Yaml value, Set<String> known) {
        if (!(value instanceof Yaml.Mapping mapping)) {
            throw new BadInput(
                    value.place(), "expected keys with values: " + String.join(", ", new TreeSet<>(known)) + ".");
        }
        mapping.entries().forEach((key, entry) -> {
            if (!known.contains(key)) {
                throw new BadInput(entry.place(), unknown(key, known));
            }
        });
        return new Fields(mapping);
    }

    private static String unknown(String key, Set<String> known) {
        return NearestKey.of(key, known)
                .map(near -> "\"" + key + "\" is not known; did you mean \"" + near + "\"?")
                .orElseGet(() -> "\"" + key + "\" is not known; use " + String.join(", ", new TreeSet<>(known)) + ".");
    }

    Place place() {
        return mapping.place();
    }

    Place place(String key) {
        return find(key).map(Yaml::place).orElse(place());
    }

    Optional<Yaml> find(String key) {
        return Optional.ofNullable(mapping.entries().get(key)).map(Yaml.Entry::value);
    }

    /** A text that is there and not blank. */
    String text(String key) {
        Yaml value = find(key).orElseThrow(() -> new BadInput(place(), "\"" + key + "\" is missing; add it."));
        return nonBlank(key, value);
    }

    Optional<String> optionalText(String key) {
        return find(key).map(value -> nonBlank(key, value));
    }

    private static String nonBlank(String key, Yaml value) {
        if (value instanceof Yaml.Scalar scalar && !scalar.text().isBlank()) {
            return scalar.text().strip();
        }
        throw new BadInput(value.place(), "\"" + key + "\" must be a text; put quotes around it if it holds a colon.");
    }

    List<String> texts(String key) {
        return items(key).stream().map(item -> nonBlank(key, item)).toList();
    }

    /** The items of a list; none where the key is left out. */
    List<Yaml> items(String key) {
        Optional<Yaml> value = find(key);
        if (value.isEmpty()) {
            return List.of();
        }
        if (value.get() instanceof Yaml.Sequence sequence) {
            return sequence.items();
        }
        throw new BadInput(value.get().place(), "\"" + key + "\" must be a list; begin each item with \"- \".");
    }

    boolean flag(String key) {
        String text = optionalText(key).orElse("false");
        if (text.equals("true") || text.equals("false")) {
            return text.equals("true");
        }
        throw new BadInput(place(key), "\"" + key + "\" must be true or false, not \"" + text + "\".");
    }

    /** A whole number from 1 to 9; 1 where the key is left out. */
    int digit(String key) {
        String text = optionalText(key).orElse("1");
        if (text.matches("[1-9]")) {
            return Integer.parseInt(text);
        }
        throw new BadInput(place(key), "\"" + key + "\" must be a whole number from 1 to 9, not \"" + text + "\".");
    }
}
