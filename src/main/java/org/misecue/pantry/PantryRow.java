package org.misecue.pantry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The parts of one row of a pantry, ours or a person's own. What is left out is empty. */
record PantryRow(YamlRow row) {

    static final List<String> KEYS = List.of(
            "name",
            "also",
            "heard",
            "kind",
            "grams",
            "weighed",
            "spread",
            "spread-from",
            "contains",
            "check",
            "keep",
            "aisle",
            "beware",
            "source");

    String name() {
        return spelled("name", row.text("name"));
    }

    List<String> also() {
        return row.texts("also").stream().map(name -> spelled("also", name)).toList();
    }

    List<String> heard() {
        return row.texts("heard").stream().map(name -> spelled("heard", name)).toList();
    }

    /** A name without a word in it could never be found. */
    private String spelled(String key, String name) {
        if (Names.words(name).isEmpty()) {
            throw row.bad(key, "“" + key + "” must have a word in it, and “" + name + "” has none");
        }
        return name;
    }

    /** The name and the others. */
    List<String> allNames() {
        return Stream.concat(Stream.of(name()), also().stream()).toList();
    }

    Optional<String> kind() {
        return row.oneOf("kind", List.copyOf(Kind.names()));
    }

    Optional<Storage> keep() {
        return row.oneOf("keep", Storage.keys()).flatMap(Storage::ofKey);
    }

    /** Sentences by name; each must be a name of the row. */
    Map<String, String> beware() {
        List<List<String>> own = allNames().stream().map(Names::words).toList();
        Map<String, String> beware = new LinkedHashMap<>();
        row.textMap("beware").forEach((name, sentence) -> {
            if (!own.contains(Names.words(name))) {
                throw row.bad("beware", "“beware” is of a name of this row, and “" + name + "” is none");
            }
            beware.put(name, sentence);
        });
        return Collections.unmodifiableMap(beware);
    }

    Set<Substance> contains() {
        return substances("contains");
    }

    Set<Substance> check() {
        return substances("check");
    }

    private Set<Substance> substances(String key) {
        List<Substance> found = new ArrayList<>();
        for (String name : row.texts(key)) {
            found.add(Substance.ofKey(name)
                    .orElseThrow(() -> row.bad(
                            key,
                            "“" + name + "” is not an allergen; known are "
                                    + String.join(
                                            ", ",
                                            Stream.of(Substance.values())
                                                    .map(Substance::key)
                                                    .toList()))));
        }
        Set<Substance> substances = EnumSet.noneOf(Substance.class);
        substances.addAll(found);
        return Collections.unmodifiableSet(substances);
    }
}
