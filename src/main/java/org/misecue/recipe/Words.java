package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.misecue.quantity.Blanks;

/** A text as words in lower case and the singular, each with its place. */
record Words(String text, List<Word> list) {

    /** What divides words in a line. */
    static final Pattern BLANKS = Pattern.compile("\\h+");

    /** One word: {@code plural} where it was written so. */
    record Word(String singular, boolean plural, int start, int end) {}

    static Words of(String text) {
        List<Word> words = new ArrayList<>();
        int end;
        for (int at = 0; at < text.length(); at = end) {
            end = end(text, at);
            if (end == at) {
                end++;
                continue;
            }
            String written = text.substring(at, end).toLowerCase(Locale.ROOT).replace('’', '\'');
            String lower = written.endsWith("'s") ? written.substring(0, written.length() - 2) : written;
            String singular = Nouns.one(lower);
            words.add(new Word(singular, !singular.equals(lower), at, end));
        }
        return new Words(text, words);
    }

    /** The end of the letters or figures that begin here; the place itself where none do. */
    private static int end(String text, int start) {
        int end = start;
        if (Character.isLetter(text.charAt(start))) {
            while (end < text.length() && isOfWord(text.charAt(end))) {
                end++;
            }
        } else {
            while (end < text.length() && isFigure(text.charAt(end))) {
                end++;
            }
        }
        return end;
    }

    private static boolean isOfWord(char sign) {
        return Character.isLetter(sign) || sign == '\'' || sign == '’' || sign == '-';
    }

    private static boolean isFigure(char sign) {
        return sign >= '0' && sign <= '9';
    }

    int size() {
        return list.size();
    }

    /** The words from one place up to another as one phrase; empty where punctuation stands between them. */
    String phrase(int from, int to) {
        StringBuilder phrase = new StringBuilder(list.get(from).singular());
        for (int at = from + 1; at < to; at++) {
            if (!joined(at - 1)) {
                return "";
            }
            phrase.append(' ').append(list.get(at).singular());
        }
        return phrase.toString();
    }

    /** Whether nothing but blanks stand between a word and the next. */
    boolean joined(int at) {
        if (at + 1 >= list.size()) {
            return false;
        }
        for (int place = list.get(at).end(); place < list.get(at + 1).start(); place++) {
            if (!Character.isWhitespace(text.charAt(place))) {
                return false;
            }
        }
        return true;
    }

    /** All words of a name as one phrase; empty where punctuation stands between them. */
    static String phrase(String name) {
        Words words = of(name);
        return words.size() == 0 ? "" : words.phrase(0, words.size());
    }

    /** How many words a text has. */
    static int count(String text) {
        List<String> pieces = split(text);
        int count = pieces.size();
        while (count > 0 && pieces.size() > 1 && pieces.get(count - 1).isEmpty()) {
            count--;
        }
        return count;
    }

    /** The pieces of a text between blanks; the first or the last is empty where blanks begin or end it. */
    static List<String> split(String text) {
        List<String> pieces = new ArrayList<>();
        int start = 0;
        for (int at = 0; at < text.length(); at++) {
            if (Blanks.is(text.charAt(at))) {
                pieces.add(text.substring(start, at));
                start = Blanks.end(text, at);
                at = start - 1;
            }
        }
        pieces.add(text.substring(start));
        return pieces;
    }
}
