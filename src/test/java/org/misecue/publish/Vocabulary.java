package org.misecue.publish;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The schema.org types that we use, from {@code vocabulary.csv}: what a document says against what they allow. */
final class Vocabulary {

    private record Property(List<String> values, boolean deprecated) {}

    private final Map<String, List<String>> parents = new HashMap<>();
    private final Map<String, Map<String, Property>> properties = new HashMap<>();

    private Vocabulary() {}

    static Vocabulary read() {
        try (InputStream in = Vocabulary.class.getResourceAsStream("vocabulary.csv")) {
            Vocabulary vocabulary = new Vocabulary();
            new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .forEach(vocabulary::add);
            return vocabulary;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private void add(String[] row) {
        List<String> values =
                Stream.of(row[2].split(" ")).filter(each -> !each.isEmpty()).toList();
        if (row[1].isEmpty()) {
            parents.put(row[0], values);
        } else {
            properties
                    .computeIfAbsent(row[0], any -> new LinkedHashMap<>())
                    .put(row[1], new Property(values, row[3].equals("deprecated")));
        }
    }

    /** Everything in a document that the vocabulary does not allow, each with its place. */
    List<String> faults(JsonNode document) {
        List<String> faults = new ArrayList<>();
        check(document, "", faults);
        return faults;
    }

    private void check(JsonNode node, String at, List<String> faults) {
        String type = node.path("@type").asText();
        if (!parents.containsKey(type)) {
            faults.add(at + ": no type " + type);
            return;
        }
        node.fields().forEachRemaining(field -> {
            if (!field.getKey().startsWith("@")) {
                String place = at + "/" + field.getKey();
                Optional<Property> property = property(type, field.getKey());
                if (property.isEmpty()) {
                    faults.add(place + ": no property of " + type);
                } else if (property.get().deprecated()) {
                    faults.add(place + ": deprecated");
                } else {
                    Iterable<JsonNode> values =
                            field.getValue().isArray() ? field.getValue() : List.of(field.getValue());
                    values.forEach(value -> checkValue(value, property.get().values(), place, faults));
                }
            }
        });
    }

    private void checkValue(JsonNode value, List<String> allowed, String at, List<String> faults) {
        if (value.isObject()) {
            String type = value.path("@type").asText();
            if (allowed.stream().noneMatch(each -> isA(type, each))) {
                faults.add(at + ": takes " + allowed + ", not a " + type);
            }
            check(value, at, faults);
        } else if (allowed.stream().noneMatch(each -> isLiteral(value, each))) {
            faults.add(at + ": takes " + allowed + ", not " + value);
        }
    }

    private Optional<Property> property(String type, String name) {
        return Stream.concat(
                        Stream.ofNullable(
                                properties.getOrDefault(type, Map.of()).get(name)),
                        parents.getOrDefault(type, List.of()).stream()
                                .flatMap(parent -> property(parent, name).stream()))
                .findFirst();
    }

    private boolean isA(String type, String wanted) {
        return type.equals(wanted)
                || parents.getOrDefault(type, List.of()).stream().anyMatch(parent -> isA(parent, wanted));
    }

    /** Kinds of plain value; ISO 8601 for dates and durations, as the vocabulary's own comments ask. */
    private static boolean isLiteral(JsonNode value, String kind) {
        String text = value.asText();
        return switch (kind) {
            case "Text" -> value.isTextual() && !text.isBlank();
            case "Number" -> value.isNumber();
            case "Integer" -> value.isIntegralNumber();
            case "Boolean" -> value.isBoolean();
            case "URL" -> value.isTextual() && isAddress(text);
            case "Date" -> value.isTextual() && isDate(text);
            case "Duration" ->
                value.isTextual()
                        && text.matches("P(?=.)(?:\\d+D)?(?:T(?=.)(?:\\d+H)?(?:\\d+M)?(?:\\d+(?:\\.\\d+)?S)?)?");
            default -> false;
        };
    }

    private static boolean isAddress(String text) {
        try {
            return new URI(text).isAbsolute();
        } catch (URISyntaxException e) {
            return false;
        }
    }

    private static boolean isDate(String text) {
        try {
            return LocalDate.parse(text) != null;
        } catch (DateTimeException e) {
            return false;
        }
    }
}
