package org.misecue.edit;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.misecue.align.Stem;
import org.misecue.shots.Saying;
import org.misecue.shots.Shot;
import org.misecue.shots.ShotKind;
import org.misecue.spoken.Words;

/**
 * The words by which a shot is known among those of its step: what is done in it and what has to be said. A word that others
 * of the step have too tells less.
 *
 * @param weights by stem
 */
record ShotWords(Map<String, Double> weights) {

    /** What a word is worth; a figure, which is heard in many forms, as much as one word. */
    private static final double WORD = 1;

    /** Nobody says what is filmed to cut away to, nor what the empty kitchen shows. */
    static ShotWords of(Shot shot, List<Shot> all) {
        boolean silent = shot.kind() == ShotKind.PICKUP
                || (shot.step() == 0 && shot.sayings().isEmpty());
        if (silent) {
            return new ShotWords(Map.of());
        }
        List<Map<String, Double>> beside = all.stream()
                .filter(one -> one.step() == shot.step() && one.kind() != ShotKind.PICKUP)
                .map(ShotWords::words)
                .toList();
        Map<String, Double> weights = new HashMap<>();
        words(shot).forEach((stem, weight) -> {
            long having =
                    beside.stream().filter(words -> words.containsKey(stem)).count();
            weights.put(stem, weight / Math.max(1, having));
        });
        return new ShotWords(Map.copyOf(weights));
    }

    private static Map<String, Double> words(Shot shot) {
        Map<String, Double> stems = new LinkedHashMap<>();
        add(shot.technique().replace('-', ' '), WORD, stems);
        for (Saying saying : shot.sayings()) {
            String around = saying.before() + " " + saying.after();
            add(around, WORD, stems);
            int words = Words.content(saying.figure()).size();
            add(saying.figure(), around.isBlank() ? WORD : WORD / Math.max(1, words), stems);
        }
        return stems;
    }

    private static void add(String text, double weight, Map<String, Double> stems) {
        Words.content(text).forEach(word -> stems.putIfAbsent(Stem.of(word), weight));
    }

    double total() {
        return weights.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    double weight(String stem) {
        return weights.getOrDefault(stem, 0.0);
    }

    /** Whether so many of them are a sign: one word alone is none where more belong to it. */
    boolean isSign(int found) {
        return found > 1 || weights.size() == 1;
    }
}
