package org.misecue.bench;

import static org.misecue.bench.ArchiveWords.any;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** A hundred queries as people type them: a fifth each of one word, two words, phrases, misspelt words and beginnings. */
final class ArchiveQueries {

    private static final int OF_EACH = 20;

    private final ArchiveWords words = ArchiveWords.read();
    private final Random random = new Random(20260101);
    private final List<String> sentences = new ArrayList<>();

    private ArchiveQueries() {
        sentences.addAll(words.talk());
        words.nuts().keySet().forEach(sentences::add);
        words.fruits().keySet().forEach(sentences::add);
        words.toppings().keySet().forEach(sentences::add);
        words.spices().forEach(sentences::add);
    }

    static List<String> all() {
        ArchiveQueries queries = new ArchiveQueries();
        List<String> all = new ArrayList<>();
        for (int i = 0; i < OF_EACH; i++) {
            all.add(queries.word());
            all.add(queries.word() + " " + queries.word());
            all.add(queries.phrase());
            all.add(queries.misspelt());
            all.add(queries.beginning());
        }
        return all;
    }

    private String word() {
        return List.of(any(sentences, random).split(" ")).stream()
                .filter(word -> word.length() > 1)
                .max(Comparator.comparingInt(word -> random.nextInt(word.length())))
                .orElseThrow();
    }

    private String phrase() {
        String[] of = any(words.talk(), random).split(" ");
        int from = random.nextInt(of.length - 2);
        return '"' + String.join(" ", List.of(of).subList(from, from + 3)).replace("I", "it") + '"';
    }

    private String misspelt() {
        String word = longWord();
        int at = 1 + random.nextInt(word.length() - 2);
        return word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
    }

    private String beginning() {
        return longWord().substring(0, 3);
    }

    private String longWord() {
        String word = word();
        return word.length() > 5 ? word : longWord();
    }
}
