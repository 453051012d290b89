package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Which part of the dish a text speaks of: "for the glaze", "the dip ingredients". */
final class PartNames {

    private record Turn(int start, int component) {}

    /** The part at hand at each place of a step. */
    record Contexts(int first, List<Integer> starts, List<Integer> components) {
        int at(int place) {
            int component = first;
            for (int turn = 0; turn < starts.size(); turn++) {
                if (starts.get(turn) <= place) {
                    component = components.get(turn);
                }
            }
            return component;
        }
    }

    private static final Pattern FOR_THE = Pattern.compile("^(?:for\\h+)?(?:the\\h+)?");

    /** A word for a part, and how a text turns to it. */
    private record Called(String word, Pattern turn, int component) {}

    private final List<Component> components;
    private final List<Called> called = new ArrayList<>();

    PartNames(List<Component> components) {
        this.components = components;
        for (int at = 0; at < components.size(); at++) {
            String name = key(components.get(at).name());
            String last = Nouns.last(name);
            if (!name.isEmpty()) {
                called.add(new Called(name, turn(name), at));
            }
            if (!last.equals(name)) {
                called.add(new Called(last, turn(last), at));
            }
        }
    }

    /** The component that a sub-heading of the method names; −1 for none. */
    int index(String name) {
        if (name.isBlank()) {
            return -1;
        }
        String wanted = key(name);
        for (int at = 0; at < components.size(); at++) {
            if (!components.get(at).name().isEmpty()
                    && key(components.get(at).name()).equals(wanted)) {
                return at;
            }
        }
        for (int at = 0; at < components.size(); at++) {
            String known = key(components.get(at).name());
            if (!known.isEmpty() && (" " + wanted + " ").contains(" " + Nouns.last(known) + " ")) {
                return at;
            }
        }
        return -1;
    }

    /** Where a text says "for the X" or "the X ingredients", X is at hand from the start of that sentence. */
    Contexts contexts(String text, int current) {
        String lower = text.toLowerCase(Locale.ROOT);
        List<Turn> turns = new ArrayList<>();
        for (Called name : called) {
            if (lower.contains(name.word)) {
                name.turn
                        .matcher(text)
                        .results()
                        .map(found -> new Turn(Sentences.start(text, found.start()), name.component))
                        .forEach(turns::add);
            }
        }
        turns.sort(Comparator.comparingInt(Turn::start));
        return new Contexts(
                current,
                turns.stream().map(Turn::start).toList(),
                turns.stream().map(Turn::component).toList());
    }

    private static Pattern turn(String name) {
        String word = Pattern.quote(name) + "(?:e?s)?";
        return Pattern.compile(
                "\\b(?:for|make|of)\\h+(?:the|your)\\h+(?:\\p{L}+\\h+)?" + word + "\\b|\\b" + word
                        + "\\h+ingredients\\b",
                Pattern.CASE_INSENSITIVE);
    }

    private static String key(String name) {
        return Nouns.singular(FOR_THE.matcher(name.toLowerCase(Locale.ROOT)).replaceFirst(""));
    }
}
