package org.misecue.recipe;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The lines of the list by every name that a step may call them; of several names the longest counts. */
final class NamedLines {

    /**
     * A name in a step.
     *
     * @param word the name, in the singular
     * @param plural whether it is one word in the plural
     * @param lines that it may mean
     */
    record Mention(int start, int end, String word, boolean plural, List<LineRef> lines) {}

    private final Map<String, List<LineRef>> strong = new HashMap<>();
    private final Map<String, List<LineRef>> weak = new HashMap<>();
    /** By their first word, how many words the longest of the names has. */
    private final Map<String, Integer> longest = new HashMap<>();

    /** Under its own names and under those that the pantry has for it, and for what may be used instead. */
    void add(LineRef ref, Larder larder) {
        add(ref, larder.called(ref.line().ingredient()));
        ref.line().alternatives().forEach(other -> add(ref, larder.called(other)));
    }

    private void add(LineRef ref, IngredientNames called) {
        called.strong().forEach(each -> add(strong, each, ref));
        called.weak().forEach(each -> add(weak, each, ref));
    }

    private void add(Map<String, List<LineRef>> names, String name, LineRef ref) {
        List<LineRef> refs = names.computeIfAbsent(name, this::begin);
        if (refs.isEmpty() || refs.get(refs.size() - 1) != ref) {
            refs.add(ref);
        }
    }

    private List<LineRef> begin(String name) {
        int first = name.indexOf(' ');
        longest.merge(first < 0 ? name : name.substring(0, first), words(name), Math::max);
        return new ArrayList<>(2);
    }

    private static int words(String name) {
        int words = 1;
        for (int at = name.indexOf(' '); at >= 0; at = name.indexOf(' ', at + 1)) {
            words++;
        }
        return words;
    }

    /** In the order of the text. */
    List<Mention> in(Wording text) {
        Words words = Words.of(text.text());
        List<Mention> mentions = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int most = longest.getOrDefault(words.list().get(at).singular(), 0);
            int length = Math.min(most, words.size() - at);
            while (length > 0 && !known(words, at, length)) {
                length--;
            }
            if (length > 0) {
                String phrase = words.phrase(at, at + length);
                boolean plural = words.list().get(at + length - 1).plural();
                List<LineRef> lines = strong.containsKey(phrase)
                        ? strong.getOrDefault(phrase, List.of())
                        : weak.getOrDefault(phrase, List.of());
                mentions.add(new Mention(
                        words.list().get(at).start(),
                        words.list().get(at + length - 1).end(),
                        phrase,
                        plural && length == 1,
                        lines));
            }
            at += Math.max(1, length);
        }
        return mentions;
    }

    private boolean known(Words words, int at, int length) {
        String phrase = words.phrase(at, at + length);
        if (!strong.containsKey(phrase) && !weak.containsKey(phrase)) {
            return false;
        }
        return NotFood.mayBeNamed(words, at, length);
    }
}
