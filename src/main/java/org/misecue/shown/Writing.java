package org.misecue.shown;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/** Tells writing from what recognisers make of a texture. */
final class Writing {

    private static final int SURE = 70;
    /** A line without figures must have so many letters in words, as … */
    private static final int LETTERS = 4;
    /** … a share of its signs. */
    private static final double SHARE = 0.75;

    private static final Pattern WORD = Pattern.compile("(?=.*[aeiouyAEIOUY])\\p{L}[\\p{L}'’-]{2,}[,.:;!?)]*");
    /** An amount: a figure with something that may be its unit or its thing. */
    private static final Pattern AMOUNT = Pattern.compile(".*[\\d½⅓⅔¼¾⅛⅜⅝⅞]\\s?(?:\\p{L}{1,2}\\b|°|%|×|\\p{L}{3,}).*");

    private Writing() {}

    static boolean isWriting(ReadLine line) {
        if (line.sure() < SURE) {
            return false;
        }
        String text = line.text();
        List<String> words = Arrays.stream(text.split(" "))
                .filter(word -> WORD.matcher(word).matches())
                .toList();
        int letters = words.stream().mapToInt(String::length).sum();
        long signs = text.chars().filter(sign -> sign != ' ').count();
        long good = text.codePoints()
                .filter(sign -> Character.isLetterOrDigit(sign) || Token.isFigure(sign))
                .count();
        boolean clean = good >= SHARE * signs;
        return clean
                && (letters >= LETTERS && 2 * letters >= signs
                        || AMOUNT.matcher(text).matches() && signs >= 3);
    }
}
