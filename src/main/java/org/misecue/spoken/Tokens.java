package org.misecue.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits one written word of a recogniser into the tokens that the grammar reads. */
final class Tokens {

    private static final Pattern TURN = Pattern.compile("(?:>>|»|--?)+");
    private static final Pattern OUTER = Pattern.compile("^[\\s\"'“”‘’(\\[{*_…,;:!?-]+|[\\s\"'“”‘’)\\]}*_…,;:-]+$");
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?…]+[\"'”’)]*$");
    private static final Pattern ORDINAL = Pattern.compile("\\d+(?:st|nd|rd|th)s?");
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(\\d+(?:[.,]\\d+)?[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞])(°?\\p{L}+)");
    private static final Pattern RANGE = Pattern.compile("(\\d+(?:\\.\\d+)?)[-–—](\\d+(?:\\.\\d+)?)");
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(?:,\\d{3})+");

    /** The tokens of one word, and what its punctuation says about borders. */
    record Split(List<String> texts, boolean turn, boolean endsSentence) {}

    private Tokens() {}

    static Split split(String word) {
        return isPlain(word) ? new Split(List.of(word), false, false) : splitUp(word);
    }

    /** Most words of a recogniser are small letters only and need no work. */
    private static boolean isPlain(String word) {
        for (int i = 0; i < word.length(); i++) {
            if (word.charAt(i) < 'a' || word.charAt(i) > 'z') {
                return false;
            }
        }
        return !word.isEmpty() && !word.endsWith("ish");
    }

    private static Split splitUp(String word) {
        String lower = word.toLowerCase(Locale.ROOT)
                .replace('’', '\'')
                .replace('\u00a0', ' ')
                .strip();
        if (TURN.matcher(lower).matches()) {
            return new Split(List.of(), true, false);
        }
        boolean ends = SENTENCE_END.matcher(lower).find();
        String core =
                OUTER.matcher(SENTENCE_END.matcher(lower).replaceFirst("")).replaceAll("");
        List<String> texts = new ArrayList<>();
        for (String piece : core.split("\\s+")) {
            addPiece(piece, texts);
        }
        return new Split(List.copyOf(texts), lower.startsWith(">>"), ends);
    }

    private static void addPiece(String piece, List<String> texts) {
        if (piece.isEmpty()) {
            return;
        }
        Matcher range = RANGE.matcher(piece);
        if (range.matches()) {
            texts.addAll(List.of(range.group(1), "to", range.group(2)));
            return;
        }
        Matcher joined = NUMBER_AND_UNIT.matcher(piece);
        if (joined.matches() && !ORDINAL.matcher(piece).matches()) {
            texts.add(joined.group(1));
            texts.add(joined.group(2).replace("°", ""));
            return;
        }
        if (THOUSANDS.matcher(piece).matches()) {
            texts.add(piece.replace(",", ""));
            return;
        }
        for (String part : piece.split("[-–—]")) {
            addWord(part.replace("°", ""), texts);
        }
    }

    private static boolean isNumber(String word) {
        return word.matches("\\d+")
                || NumberWords.UNITS.containsKey(word)
                || NumberWords.TEENS.containsKey(word)
                || NumberWords.TENS.containsKey(word);
    }

    /** "butter's" is "butter is": what follows may be its amount. */
    private static void addWord(String part, List<String> texts) {
        if (part.isEmpty()) {
            return;
        }
        if (part.endsWith("ish") && isNumber(part.substring(0, part.length() - 3))) {
            texts.add(part.substring(0, part.length() - 3));
            texts.add("ish");
        } else if (part.endsWith("'s") && part.length() > 2 && !part.equals("let's") && !part.equals("baker's")) {
            texts.add(part.substring(0, part.length() - 2));
            texts.add("is");
        } else {
            texts.add(part);
        }
    }
}
