package org.misecue.search;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** What tools, places and doings are called in other kitchens; ingredients have their names in the pantry. */
public final class KitchenNames {

    private static final List<Set<String>> GROUPS = read();

    private KitchenNames() {}

    /** Groups of names for the same thing. */
    public static List<Set<String>> groups() {
        return GROUPS;
    }

    private static List<Set<String>> read() {
        try (InputStream in = KitchenNames.class.getResourceAsStream("kitchen-names.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> (Set<String>) new LinkedHashSet<>(List.of(line.split(",\\s*"))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
