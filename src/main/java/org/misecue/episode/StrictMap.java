package org.misecue.episode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.NearestWord;
import org.misecue.notice.Place;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;

/** One mapping of a settings file, read strictly: a key that nobody knows, or knows twice, is an error at its place. */
final class StrictMap {

    private final String file;
    private final Place start;
    private final Map<String, Node> values = new LinkedHashMap<>();

    /**
     * @param where how a message names this mapping: "kitchen: ", or empty for the whole file
     * @throws BadInput at the first key that is unknown or stands twice
     */
    StrictMap(String file, String where, MappingNode node, List<String> known) {
        this.file = file;
        this.start = where.isEmpty() ? Place.of(file) : place(node);
        for (NodeTuple tuple : node.getValue()) {
            Place place = place(tuple.getKeyNode());
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
            if (!known.contains(key)) {
                throw new BadInput(place, where + "“" + key + "” is not a setting; " + NearestWord.remedy(key, known));
            }
            if (values.put(key, tuple.getValueNode()) != null) {
                throw new BadInput(place, where + "“" + key + "” stands here for the second time; keep one of them.");
            }
        }
    }

    /** The text of a key; empty where the key is left out or left blank. */
    Optional<String> text(String key, String example) {
        Node node = values.get(key);
        if (node == null || node.getTag().equals(Tag.NULL)) {
            return Optional.empty();
        }
        if (node instanceof ScalarNode scalar) {
            return Optional.of(scalar.getValue().strip());
        }
        throw wrong(key, "one value", example);
    }

    /** A whole number within both bounds, or the usual one where the key is left out. */
    int whole(String key, int least, int most, int usual) {
        Optional<String> text = text(key, key + ": " + usual);
        if (text.isEmpty()) {
            return usual;
        }
        try {
            int value = Integer.parseInt(text.get());
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException notWhole) {
            // told below, as for a number out of bounds
        }
        throw wrong(key, "a whole number from " + least + " to " + most, key + ": " + usual);
    }

    /** Whether the first of two words is given, or what is usual where the key is left out. */
    boolean choice(String key, String yes, String no, boolean usual) {
        String text = text(key, key + ": " + yes).orElse(usual ? yes : no);
        if (text.equals(yes) || text.equals(no)) {
            return text.equals(yes);
        }
        throw wrong(key, yes + " or " + no, key + ": " + (usual ? yes : no));
    }

    /** The mapping under a key, read as strictly; empty where the key is left out or left blank. */
    Optional<StrictMap> section(String key, List<String> known) {
        Node node = values.get(key);
        if (node == null || node.getTag().equals(Tag.NULL)) {
            return Optional.empty();
        }
        if (node instanceof MappingNode mapping) {
            return Optional.of(new StrictMap(file, key + ": ", mapping, known));
        }
        throw wrong(key, "a block of settings", "indented lines such as “" + known.get(0) + ": …”");
    }

    /** The mappings in the list under a key, each read as strictly; none where the key is left out or left blank. */
    List<StrictMap> sections(String key, List<String> known) {
        List<StrictMap> sections = new ArrayList<>();
        for (Node item : items(key, "- " + known.get(0) + ": …")) {
            if (!(item instanceof MappingNode mapping)) {
                throw new BadInput(
                        place(item),
                        key + ": each item is a block of settings; write for example “- " + known.get(0) + ": …”.");
            }
            sections.add(new StrictMap(file, key + ": ", mapping, known));
        }
        return sections;
    }

    /** The texts in the list under a key; none where the key is left out or left blank. */
    List<String> texts(String key, String example) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(key, key + ": " + example)) {
            if (!(item instanceof ScalarNode scalar)) {
                throw new BadInput(
                        place(item), key + ": each item is one value; write for example " + key + ": " + example + ".");
            }
            texts.add(scalar.getValue().strip());
        }
        return texts;
    }

    /**
     * What stands under a name that a person chose: a block of settings, or one value in the place of one.
     *
     * @param map the block; for one value, a block that has it under the last of the known keys
     */
    record Named(String name, Place place, StrictMap map) {}

    /** The names under a key with what stands under each; none where the key is left out or left blank. */
    List<Named> named(String key, List<String> known, String example) {
        Node node = values.get(key);
        if (node == null || node.getTag().equals(Tag.NULL)) {
            return List.of();
        }
        if (!(node instanceof MappingNode mapping)) {
            throw wrong(key, "a block of names", "indented lines such as " + example);
        }
        List<Named> all = new ArrayList<>();
        for (NodeTuple tuple : mapping.getValue()) {
            Place at = place(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode scalar)) {
                throw new BadInput(at, key + ": a name is one value; write for example " + example + ".");
            }
            String name = scalar.getValue().strip();
            if (all.stream().anyMatch(one -> one.name().equals(name))) {
                throw new BadInput(at, key + ": “" + name + "” stands here for the second time; keep one of them.");
            }
            all.add(new Named(name, at, block(key + ": " + name + ": ", tuple.getValueNode(), known)));
        }
        return all;
    }

    private StrictMap block(String where, Node node, List<String> known) {
        if (node instanceof MappingNode mapping) {
            return new StrictMap(file, where, mapping, known);
        }
        String last = known.get(known.size() - 1);
        ScalarNode key = new ScalarNode(Tag.STR, last, node.getStartMark(), node.getEndMark(), ScalarStyle.PLAIN);
        return new StrictMap(
                file,
                where,
                new MappingNode(
                        Tag.MAP,
                        true,
                        List.of(new NodeTuple(key, node)),
                        node.getStartMark(),
                        node.getEndMark(),
                        FlowStyle.BLOCK),
                known);
    }

    private List<Node> items(String key, String example) {
        Node node = values.get(key);
        if (node == null || node.getTag().equals(Tag.NULL)) {
            return List.of();
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue();
        }
        throw wrong(key, "a list", example);
    }

    Place place(String key) {
        Node node = values.get(key);
        return node == null ? start : place(node);
    }

    boolean has(String key) {
        return text(key, key + ": …").isPresent();
    }

    /** The error for a value of the wrong kind, at its place. */
    BadInput wrong(String key, String expected, String example) {
        Node node = values.get(key);
        String found = node == null
                ? "left out"
                : node instanceof ScalarNode scalar
                        ? "“" + scalar.getValue() + "”"
                        : node instanceof SequenceNode ? "a list" : "a block of settings";
        return new BadInput(
                place(key),
                "“" + key + "” must be " + expected + ", not " + found + "; write for example " + example + ".");
    }

    /** The error for one value of a list, at its place. */
    BadInput wrongItem(String key, String item, String expected, String example) {
        Place at = items(key, example).stream()
                .filter(node -> node instanceof ScalarNode scalar
                        && scalar.getValue().strip().equals(item))
                .findFirst()
                .map(this::place)
                .orElse(place(key));
        return new BadInput(
                at,
                key + ": each item must be " + expected + ", not “" + item + "”; write for example " + example + ".");
    }

    private Place place(Node node) {
        Mark mark = node.getStartMark();
        return new Place(file, mark.getLine() + 1, mark.getColumn() + 1);
    }
}
