package org.misecue.pantry;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** One row of a data file. Each getter says what it wants and fails with the row's line. */
record YamlRow(Place place, JsonNode node) {

    static YamlRow of(Place place, JsonNode node, Set<String> keys) {
        YamlRow row = new YamlRow(place, node);
        if (!node.isObject()) {
            throw row.bad("expected a row of keys and values");
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!keys.contains(name)) {
                throw row.bad("unknown key “" + name + "”; known are "
                        + String.join(", ", keys.stream().sorted().toList()));
            }
        }
        return row;
    }

    BadInput bad(String sentence) {
        return new BadInput(place, sentence + ".");
    }

    boolean has(String key) {
        return node.has(key);
    }

    /** A text that must be there. */
    String text(String key) {
        String text = node.path(key).asText("").strip();
        if (text.isEmpty() || !node.path(key).isValueNode()) {
            throw bad("“" + key + "” must be a text");
        }
        return text;
    }

    /** A list of texts; empty where the key is missing. */
    List<String> texts(String key) {
        JsonNode list = node.path(key);
        if (list.isMissingNode()) {
            return List.of();
        }
        if (!list.isArray()) {
            throw bad("“" + key + "” must be a list such as [one, other]");
        }
        List<String> texts = new ArrayList<>();
        for (JsonNode item : list) {
            if (!item.isTextual() || item.asText().isBlank()) {
                throw bad("“" + key + "” must hold texts only; quote " + item);
            }
            texts.add(item.asText().strip());
        }
        return List.copyOf(texts);
    }

    boolean yes(String key) {
        JsonNode flag = node.path(key);
        if (!flag.isMissingNode() && !flag.isBoolean()) {
            throw bad("“" + key + "” must be true or false");
        }
        return flag.asBoolean(false);
    }

    /** Numbers above zero by key, in the order written; empty where the key is missing. */
    Map<String, RationalNumber> numbers(String key) {
        JsonNode map = node.path(key);
        if (!map.isMissingNode() && !map.isObject()) {
            throw bad("“" + key + "” must be a mapping such as {cup: 125}");
        }
        Map<String, RationalNumber> numbers = new LinkedHashMap<>();
        map.properties().forEach(entry -> {
            if (!entry.getValue().isNumber() || entry.getValue().decimalValue().signum() <= 0) {
                throw bad("“" + key + "” must hold numbers above zero, and " + entry.getKey() + " is "
                        + entry.getValue());
            }
            numbers.put(entry.getKey(), Rationals.of(entry.getValue().asText()));
        });
        return numbers;
    }

    Duration duration(String key) {
        try {
            return Duration.parse(text(key));
        } catch (DateTimeParseException e) {
            throw bad("“" + key + "” must be a duration such as PT30M or PT2H");
        }
    }
}
