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

    private static final Cued TURNS = Cued.inAnyCase("\\b(?:for|make|of)\\h+(?:the|your)\\h+(?:\\p{L}+\\h+)?$");
    private static final Cued PLURAL = Cued.inAnyCase("(?:e?s)?\\b");
    private static final Cued ITS_INGREDIENTS = Cued.inAnyCase("(?:e?s)?\\h+ingredients\\b");

    /** A word for a part. */
    private record Called(String word, int[] places, int component) {}

    private final List<Component> components;
    private final List<Called> called = new ArrayList<>();

    PartNames(List<Component> components) {
        this.components = components;
        for (int at = 0; at < components.size(); at++) {
            String name = key(components.get(at).name());
            String last = Nouns.last(name);
            if (!name.isEmpty()) {
                called.add(new Called(name, Wording.places(name), at));
            }
            if (!last.equals(name)) {
                called.add(new Called(last, Wording.places(last), at));
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
    Contexts contexts(Wording wording, int current) {
        String text = wording.text();
        List<Turn> turns = new ArrayList<>();
        for (Called name : called) {
            for (int at = wording.mayHold(name.places) ? place(name, text, 0) : -1;
                    at >= 0;
                    at = place(name, text, at + 1)) {
                if (isTurn(wording, at, at + name.word.length())) {
                    turns.add(new Turn(Sentences.start(text, at), name.component));
                }
            }
        }
        turns.sort(Comparator.comparingInt(Turn::start));
        return new Contexts(
                current,
                turns.stream().map(Turn::start).toList(),
                turns.stream().map(Turn::component).toList());
    }

    /** Where the word stands next; −1 where it does not. */
    private static int place(Called name, String text, int from) {
        for (int at = from; at + name.word.length() <= text.length(); at++) {
            if (text.regionMatches(true, at, name.word, 0, name.word.length())) {
                return at;
            }
        }
        return -1;
    }

    private static boolean isTurn(Wording text, int start, int end) {
        return (TURNS.endsAt(text, start) && PLURAL.at(text, end).isPresent())
                || (!Cued.isInWord(text.text(), start)
                        && ITS_INGREDIENTS.at(text, end).isPresent());
    }

    private static String key(String name) {
        return Nouns.singular(FOR_THE.matcher(name.toLowerCase(Locale.ROOT)).replaceFirst(""));
    }
}
