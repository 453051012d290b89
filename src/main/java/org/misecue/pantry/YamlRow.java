package org.misecue.pantry;

import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;
import org.misecue.notice.Place;
import org.misecue.quantity.Rationals;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import tech.units.indriya.function.RationalNumber;

/** One row of a data file. Each getter says what it wants and fails with the line of what it got. */
record YamlRow(Place place, Map<String, Node> values) {

    /** Up to 100 kg in grams; more digits than a scale has are a slip. */
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?");

    static YamlRow of(String file, Node node, List<String> keys) {
        if (!(node instanceof MappingNode mapping)) {
            throw new BadInput(placeOf(file, node), "expected a row of keys and values such as “name: rye flour”.");
        }
        return new YamlRow(placeOf(file, node), pairs(file, mapping, keys));
    }

    private static Map<String, Node> pairs(String file, MappingNode mapping, List<String> keys) {
        Map<String, Node> values = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
            Place place = placeOf(file, tuple.getKeyNode());
            if (!keys.isEmpty() && !keys.contains(key)) {
                throw new BadInput(place, "unknown key “" + shown(key) + "”; " + NearestWord.remedy(key, keys));
            }
            if (values.put(key, tuple.getValueNode()) != null) {
                throw new BadInput(place, "“" + shown(key) + "” stands here for the second time; keep one of them.");
            }
        }
        return values;
    }

    private static Place placeOf(String file, Node node) {
        return Place.of(file, node.getStartMark().getLine() + 1);
    }

    /** Enough of what somebody typed to know it again, on one line. */
    private static String shown(String typed) {
        String line = typed.replaceAll("[\\s\\p{C}]+", " ").strip();
        return line.length() > 60 ? line.substring(0, 60) + "…" : line;
    }

    BadInput bad(String sentence) {
        return new BadInput(place, sentence + ".");
    }

    /** At the line of the key. */
    BadInput bad(String key, String sentence) {
        Node node = values.get(key);
        return new BadInput(node == null ? place : placeOf(place.file(), node), sentence + ".");
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    /** A text that must be there. */
    String text(String key) {
        return textIfAny(key).orElseThrow(() -> bad(key, "“" + key + "” must be a text"));
    }

    /** Empty where the key is missing. */
    Optional<String> textIfAny(String key) {
        Node node = values.get(key);
        if (node == null) {
            return Optional.empty();
        }
        String text = node instanceof ScalarNode scalar && !node.getTag().equals(Tag.NULL)
                ? scalar.getValue().strip()
                : "";
        if (text.isEmpty()) {
            throw bad(key, "“" + key + "” must be a text");
        }
        return Optional.of(text);
    }

    /** One of the words; empty where the key is missing. */
    Optional<String> oneOf(String key, List<String> words) {
        Optional<String> text = textIfAny(key);
        text.filter(word -> !words.contains(word)).ifPresent(word -> {
            throw bad(key, "“" + key + "” must be one of " + String.join(", ", words) + ", not “" + shown(word) + "”");
        });
        return text;
    }

    /** A list of texts; empty where the key is missing. */
    List<String> texts(String key) {
        Node node = values.get(key);
        if (node == null) {
            return List.of();
        }
        if (!(node instanceof SequenceNode list)) {
            throw bad(key, "“" + key + "” must be a list such as [one, other]");
        }
        List<String> texts = new ArrayList<>();
        for (Node item : list.getValue()) {
            if (!(item instanceof ScalarNode scalar)) {
                throw bad(key, "“" + key + "” must hold texts only, and one is a list or a block");
            }
            if (!item.getTag().equals(Tag.STR) || scalar.getValue().isBlank()) {
                throw bad(key, "“" + key + "” must hold texts only; quote " + shown(scalar.getValue()));
            }
            texts.add(scalar.getValue().strip());
        }
        return List.copyOf(texts);
    }

    boolean yes(String key) {
        return textIfAny(key)
                .map(text -> {
                    if (!text.equals("true") && !text.equals("false")) {
                        throw bad(key, "“" + key + "” must be true or false");
                    }
                    return text.equals("true");
                })
                .orElse(false);
    }

    /** A number above zero that must be there. */
    RationalNumber number(String key) {
        return positive(key, key, text(key));
    }

    /** Numbers above zero by key, in the order written; empty where the key is missing. */
    Map<String, RationalNumber> numbers(String key) {
        Map<String, RationalNumber> numbers = new LinkedHashMap<>();
        inner(key, "{cup: 125}")
                .forEach((name, node) -> numbers.put(
                        name,
                        positive(
                                key,
                                name,
                                node instanceof ScalarNode scalar ? scalar.getValue() : "a list or a block")));
        return numbers;
    }

    /** Two numbers above zero, the lower first, by key; empty where the key is missing. */
    Map<String, List<RationalNumber>> ranges(String key) {
        Map<String, List<RationalNumber>> ranges = new LinkedHashMap<>();
        inner(key, "{cup: [100, 145]}").forEach((name, node) -> {
            List<RationalNumber> ends = node instanceof SequenceNode list
                    ? list.getValue().stream()
                            .map(end -> positive(
                                    key, name, end instanceof ScalarNode scalar ? scalar.getValue() : "no number"))
                            .toList()
                    : List.of();
            if (ends.size() != 2 || ends.get(0).compareTo(ends.get(1)) > 0) {
                throw bad(
                        key,
                        "“" + key + "” must give the lowest and the highest, such as {" + shown(name)
                                + ": [100, 145]}");
            }
            ranges.put(name, ends);
        });
        return ranges;
    }

    /** Texts by key, in the order written; empty where the key is missing. */
    Map<String, String> textMap(String key) {
        Map<String, String> texts = new LinkedHashMap<>();
        inner(key, "{cornflour: in the US it is maize flour}").forEach((name, node) -> {
            if (!(node instanceof ScalarNode scalar) || scalar.getValue().isBlank()) {
                throw bad(key, "“" + key + "” must hold a sentence for each name");
            }
            texts.put(name, scalar.getValue().strip());
        });
        return texts;
    }

    private Map<String, Node> inner(String key, String example) {
        Node node = values.get(key);
        if (node == null) {
            return Map.of();
        }
        if (!(node instanceof MappingNode mapping)) {
            throw bad(key, "“" + key + "” must be a mapping such as " + example);
        }
        return pairs(place.file(), mapping, List.of());
    }

    private RationalNumber positive(String key, String name, String number) {
        if (!NUMBER.matcher(number).matches() || Rationals.of(number).signum() <= 0) {
            throw bad(
                    key,
                    "“" + key + "” must hold numbers above zero such as 125 or 4.2, and " + shown(name) + " is "
                            + shown(number));
        }
        return Rationals.of(number);
    }

    Duration duration(String key) {
        try {
            return Duration.parse(text(key));
        } catch (DateTimeParseException e) {
            throw bad(key, "“" + key + "” must be a duration such as PT30M or PT2H");
        }
    }
}
