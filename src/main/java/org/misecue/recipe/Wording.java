package org.misecue.recipe;

import java.util.Arrays;

/**
 * A text that many patterns are asked about. Which letters stand beside each other in it is noted once; a glance at that
 * tells of most words that they do not stand in it.
 */
final class Wording {

    private static final int PLACES = 4096;

    private final String text;
    private final long[] seen = new long[PLACES / Long.SIZE];
    private int[] starts = {};

    private Wording(String text) {
        this.text = text;
        char before = 0;
        char beforeThat = 0;
        for (int at = 0; at < text.length(); at++) {
            char letter = folded(text.charAt(at));
            note(one(letter));
            note(two(before, letter));
            note(three(beforeThat, before, letter));
            beforeThat = before;
            before = letter;
        }
    }

    static Wording of(String text) {
        return new Wording(text);
    }

    String text() {
        return text;
    }

    /** Without blanks around it. */
    Wording strip() {
        String bare = text.strip();
        return bare.length() == text.length() ? this : of(bare);
    }

    /** Where words begin, and signs that are no letters of English; the end of the text comes last. */
    int[] starts() {
        if (starts.length == 0) {
            int[] found = new int[text.length() + 1];
            int count = 0;
            for (int at = 0; at <= text.length(); at++) {
                if (isStart(at)) {
                    found[count++] = at;
                }
            }
            starts = Arrays.copyOf(found, count);
        }
        return starts;
    }

    private boolean isStart(int at) {
        if (at == text.length() || !Character.isLetterOrDigit(text.charAt(at))) {
            return at == text.length() || text.charAt(at) >= 128;
        }
        return at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1));
    }

    /** Whether letters that {@link #places} gave may stand here in this order; if not, they do not. */
    boolean mayHold(int[] places) {
        return mayHold(places, 0, places.length);
    }

    /** The same of so many places that stand among others. */
    boolean mayHold(int[] places, int from, int count) {
        for (int at = from; at < from + count; at++) {
            if ((seen[places[at] >> 6] & 1L << places[at]) == 0) {
                return false;
            }
        }
        return true;
    }

    /** What a text that holds these letters, in any case, has noted. */
    static int[] places(String letters) {
        String plain = folded(letters);
        return switch (plain.length()) {
            case 0 -> new int[0];
            case 1 -> new int[] {one(plain.charAt(0))};
            case 2 -> new int[] {two(plain.charAt(0), plain.charAt(1))};
            default -> {
                int[] places = new int[plain.length() - 2];
                for (int at = 0; at < places.length; at++) {
                    places[at] = three(plain.charAt(at), plain.charAt(at + 1), plain.charAt(at + 2));
                }
                yield places;
            }
        };
    }

    private static String folded(String letters) {
        StringBuilder folded = new StringBuilder(letters);
        for (int at = 0; at < letters.length(); at++) {
            folded.setCharAt(at, folded(letters.charAt(at)));
        }
        return folded.toString();
    }

    /** One form for all that patterns without regard to case take for the same. */
    private static char folded(char sign) {
        if (sign < 128) {
            return sign >= 'A' && sign <= 'Z' ? (char) (sign | 0x20) : sign;
        }
        return Character.toLowerCase(Character.toUpperCase(sign));
    }

    private void note(int place) {
        seen[place >> 6] |= 1L << place;
    }

    private static int one(char letter) {
        return spread(letter);
    }

    private static int two(char first, char second) {
        return spread(first * 0x85EBCA6B + second);
    }

    private static int three(char first, char second, char third) {
        return spread(first * 0xC2B2AE35 + second * 0x27D4EB2F + third);
    }

    /** A multiplication that leaves no two neighbours beside each other; its highest bits are the place. */
    private static int spread(int letters) {
        return (letters * 0x9E3779B1) >>> 20;
    }
}
