package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
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

    private PartNames() {}

    /** The component that a sub-heading of the method names; −1 for none. */
    static int index(List<Component> components, String name) {
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
    static Contexts contexts(List<Component> components, String text, int current) {
        String lower = text.toLowerCase(Locale.ROOT);
        List<Turn> turns = new ArrayList<>();
        for (int at = 0; at < components.size(); at++) {
            String name = key(components.get(at).name());
            String last = Nouns.last(name);
            if (!name.isEmpty() && lower.contains(name)) {
                addTurns(turns, text, name, at);
            }
            if (!last.equals(name) && lower.contains(last)) {
                addTurns(turns, text, last, at);
            }
        }
        turns.sort(Comparator.comparingInt(Turn::start));
        return new Contexts(
                current,
                turns.stream().map(Turn::start).toList(),
                turns.stream().map(Turn::component).toList());
    }

    private static void addTurns(List<Turn> turns, String text, String name, int component) {
        String word = Pattern.quote(name) + "(?:e?s)?";
        Matcher matcher = Pattern.compile(
                        "\\b(?:for|make|of)\\h+(?:the|your)\\h+(?:\\p{L}+\\h+)?" + word + "\\b|\\b" + word
                                + "\\h+ingredients\\b",
                        Pattern.CASE_INSENSITIVE)
                .matcher(text);
        while (matcher.find()) {
            turns.add(new Turn(Sentences.start(text, matcher.start()), component));
        }
    }

    private static String key(String name) {
        return Nouns.singular(FOR_THE.matcher(name.toLowerCase(Locale.ROOT)).replaceFirst(""));
    }
}
