package org.misecue.search;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A word of a text as the search sees it.
 *
 * @param word in lower case, without accents, apostrophes and a possessive s
 * @param from the word is {@code [from, to)} in its text
 */
record Token(String word, int from, int to) {

    /** Too common to look for where there is anything else to look for, and never taken for sound-alikes. */
    private static final Set<String> COMMON =
            Set.of(("a about add added adding adds after again all also always am an and another any are as"
                            + " at be because been before behind beside between but by can could did do does during each"
                            + " ever every for from get go got had has have he her here him his how i if im in into is"
                            + " it its just like many me more most much my next no not now of off okay on one onto or"
                            + " other our out over put really right same she since so some such than that the their them"
                            + " then there these they thing this those through till to too toward towards um under until"
                            + " up us very was we well went were what when where which while who will with would yeah"
                            + " yes you your youre")
                    .split(" "));

    private static final int LEAST_DOING = 5;
    /** What ends as doing does and is a thing. */
    private static final Set<String> THINGS = Set.of(
            "icing",
            "frosting",
            "topping",
            "filling",
            "pudding",
            "dressing",
            "stuffing",
            "coating",
            "lining",
            "dumpling",
            "something",
            "anything",
            "everything",
            "nothing",
            "evening",
            "morning",
            "spring",
            "string",
            "ceiling",
            "seedling");

    static List<Token> of(String text) {
        List<Token> tokens = new ArrayList<>();
        int position = 0;
        while (position < text.length()) {
            int end = endOfWord(text, position);
            if (end > position) {
                add(text, position, end, tokens);
            }
            position = Math.max(end, position + 1);
        }
        return tokens;
    }

    /** Shared by the word's forms: whisk, whisks, whisking. */
    String stem() {
        return Forms.of(word).stem();
    }

    /** Shared by words that sound alike; empty where the word is too short or too common for that to help. */
    String sound() {
        return Forms.of(word).sound();
    }

    boolean isCommon() {
        return isCommon(word);
    }

    /**
     * Whether it says what is being done, as far as its form shows: a thing may be named a while before that is done with
     * it.
     */
    boolean isDoing() {
        return word.endsWith("ing") && word.length() >= LEAST_DOING && !THINGS.contains(word);
    }

    /** What does it, or whoever: who grates has a grater. */
    Token doer() {
        return of(stem() + (stem().endsWith("e") ? "r" : "er")).get(0);
    }

    static boolean isCommon(String word) {
        return COMMON.contains(word);
    }

    /** Whether the other is this word in some form. */
    boolean isFormOf(Token other) {
        return word.equals(other.word) || stem().equals(other.stem());
    }

    boolean soundsLike(Token other) {
        return !sound().isEmpty() && sound().equals(other.sound());
    }

    private static void add(String text, int from, int to, List<Token> tokens) {
        String word = plain(text.substring(from, to));
        if (!word.isEmpty()) {
            tokens.add(new Token(word, from, to));
        }
    }

    /** As far as the word goes that begins here; {@code from} itself where none does. */
    static int endOfWord(String text, int from) {
        int end = from;
        while (end < text.length()) {
            char c = text.charAt(end);
            if (c == ' ' || !(isPlain(c) || isWordPart(c) || joins(text, from, end))) {
                break;
            }
            end++;
        }
        return end;
    }

    private static boolean isWordPart(char c) {
        return Character.isLetterOrDigit(c)
                || Character.isSurrogate(c)
                || isOneOf(c, Character.OTHER_NUMBER)
                || isOneOf(c, Character.NON_SPACING_MARK);
    }

    private static boolean isOneOf(char c, byte category) {
        return Character.getType(c) == category;
    }

    /** An apostrophe between letters, a point or comma between digits. */
    private static boolean joins(String text, int from, int at) {
        if (at == from || at + 1 >= text.length()) {
            return false;
        }
        char before = text.charAt(at - 1);
        char after = text.charAt(at + 1);
        return switch (text.charAt(at)) {
            case '\'', '\u2019' -> Character.isLetter(before) && Character.isLetter(after);
            case '.', ',' -> Character.isDigit(before) && Character.isDigit(after);
            default -> false;
        };
    }

    /** How a word of a text is kept; empty where nothing is left of it. */
    static String plain(String written) {
        if (endOfPlain(written, 0) == written.length()) {
            return written;
        }
        String word = written.toLowerCase(Locale.ROOT);
        if (!isAscii(word)) {
            word = Normalizer.normalize(word, Normalizer.Form.NFD)
                    .replaceAll("\\p{Mn}", "")
                    .replace('\u2019', '\'');
        }
        if (word.indexOf('\'') < 0) {
            return word;
        }
        if (word.endsWith("'s")) {
            word = word.substring(0, word.length() - 2);
        }
        return word.replace("'", "");
    }

    /** As far as a word goes in small letters and figures, which are kept as they are written. */
    static int endOfPlain(String text, int from) {
        int end = from;
        while (end < text.length() && isPlain(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static boolean isPlain(char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    }

    private static boolean isAscii(String word) {
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) > 127) {
                return false;
            }
        }
        return true;
    }
}
