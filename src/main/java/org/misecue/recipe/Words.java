package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text as words in lower case and the singular, each with its place. */
record Words(String text, List<Word> list) {

    /** One word: {@code plural} where it was written so. */
    record Word(String singular, boolean plural, int start, int end) {}

    private static final Pattern WORD = Pattern.compile("[\\p{L}][\\p{L}'’-]*|\\d+");

    static Words of(String text) {
        List<Word> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            String written = matcher.group().toLowerCase(Locale.ROOT).replace('’', '\'');
            String lower = written.endsWith("'s") ? written.substring(0, written.length() - 2) : written;
            String singular = Nouns.singular(lower);
            words.add(new Word(singular, !singular.equals(lower), matcher.start(), matcher.end()));
        }
        return new Words(text, words);
    }

    int size() {
        return list.size();
    }

    /** The words from one place up to another as one phrase; empty where punctuation stands between them. */
    String phrase(int from, int to) {
        StringBuilder phrase = new StringBuilder(list.get(from).singular());
        for (int at = from + 1; at < to; at++) {
            if (!text.substring(list.get(at - 1).end(), list.get(at).start()).isBlank()) {
                return "";
            }
            phrase.append(' ').append(list.get(at).singular());
        }
        return phrase.toString();
    }
}
