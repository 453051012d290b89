package org.misecue.shots;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;
import org.misecue.notice.Place;
import org.misecue.notice.StrictYaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/**
 * One mapping of a template, read strictly: what is unknown, missing or of another kind stops the work at its place. The
 * kinds of values are those of the schema: a number or a yes is no text, and a number in quotes is no number.
 */
final class TemplateFields {

    private final String file;
    private final Node node;
    private final Map<String, Node> values = new LinkedHashMap<>();

    private TemplateFields(String file, Node node, List<String> known) {
        this.file = file;
        this.node = node;
        if (!(node instanceof MappingNode mapping)) {
            throw new BadInput(place(node), "expected keys with values: " + String.join(", ", known) + ".");
        }
        for (NodeTuple tuple : mapping.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
            if (!known.contains(key)) {
                throw new BadInput(
                        place(tuple.getKeyNode()), "“" + key + "” is not known; " + NearestWord.remedy(key, known));
            }
            if (values.put(key, tuple.getValueNode()) != null) {
                throw new BadInput(place(tuple.getKeyNode()), "“" + key + "” stands twice; keep one of them.");
            }
        }
    }

    /** The whole file. */
    static TemplateFields of(String file, String text, List<String> known) {
        Node root = StrictYaml.tree(file, text, mark -> place(file, mark), "“technique: fold” and what follows")
                .orElseThrow(() ->
                        new BadInput(Place.of(file), "the file is empty; a shot template begins with “technique:”."));
        return new TemplateFields(file, root, known);
    }

    private static Place place(String file, Mark mark) {
        return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
    }

    private Place place(Node at) {
        return place(file, at.getStartMark());
    }

    Place place(String key) {
        return place(values.getOrDefault(key, node));
    }

    BadInput wrong(String key, String expected) {
        return new BadInput(place(key), "“" + key + "” must be " + expected + ".");
    }

    /** A text that is there and not blank. */
    String text(String key) {
        return optionalText(key).orElseThrow(() -> new BadInput(place(node), "“" + key + "” is missing; add it."));
    }

    Optional<String> optionalText(String key) {
        return Optional.ofNullable(values.get(key)).map(value -> text(key, value));
    }

    private String text(String key, Node value) {
        if (value instanceof ScalarNode scalar
                && scalar.getTag().equals(Tag.STR)
                && !scalar.getValue().isBlank()) {
            return scalar.getValue().strip();
        }
        throw new BadInput(
                place(value),
                "“" + key + "” must be a text; put it in quotes if it holds a colon, a number or yes and no.");
    }

    List<String> texts(String key) {
        return items(key, value -> text(key, value));
    }

    List<TemplateFields> mappings(String key, List<String> known) {
        return items(key, value -> new TemplateFields(file, value, known));
    }

    /** The items of a list; none where the key is left out. */
    private <T> List<T> items(String key, Function<Node, T> read) {
        Node value = values.get(key);
        if (value == null) {
            return List.of();
        }
        if (!(value instanceof SequenceNode sequence)) {
            throw wrong(key, "a list; begin each item with “- ”");
        }
        List<T> items = new ArrayList<>();
        sequence.getValue().forEach(item -> items.add(read.apply(item)));
        return List.copyOf(items);
    }

    /** False where the key is left out. */
    boolean flag(String key) {
        return plain(key, Tag.BOOL, "true|false", "true or false")
                .map("true"::equals)
                .orElse(false);
    }

    /** A whole number from 1 to 9; 1 where the key is left out. */
    int digit(String key) {
        return plain(key, Tag.INT, "[1-9]", "a whole number from 1 to 9")
                .map(Integer::parseInt)
                .orElse(1);
    }

    private Optional<String> plain(String key, Tag tag, String pattern, String expected) {
        Node value = values.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof ScalarNode scalar
                && scalar.getTag().equals(tag)
                && scalar.getValue().matches(pattern)) {
            return Optional.of(scalar.getValue());
        }
        throw wrong(
                key, value instanceof ScalarNode scalar ? expected + ", not “" + scalar.getValue() + "”" : expected);
    }

    /** One of several words; the first where the key is left out. */
    <T> T choice(String key, List<T> choices, Function<T, String> code) {
        Optional<String> text = optionalText(key);
        if (text.isEmpty()) {
            return choices.get(0);
        }
        List<String> words = choices.stream().map(code).toList();
        int at = words.indexOf(text.get());
        if (at < 0) {
            throw new BadInput(
                    place(key), "“" + text.get() + "” is no “" + key + "”; " + NearestWord.remedy(text.get(), words));
        }
        return choices.get(at);
    }
}
