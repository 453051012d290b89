package org.misecue.spoken;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits one written word of a recogniser into the tokens that the grammar reads. */
final class Tokens {

    private static final Pattern TURN = Pattern.compile("(?:>>|»|--?)++");
    private static final Pattern OUTER = Pattern.compile("^[\\s\"'“”‘’(\\[{*_…,;:!?-]+|[\\s\"'“”‘’)\\]}*_…,;:-]+$");
    private static final Pattern SENTENCE_END = Pattern.compile("[.!?…]+[\"'”’)]*$");
    private static final Pattern ORDINAL = Pattern.compile("\\d+(?:st|nd|rd|th)s?");
    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(\\d+(?:[.,]\\d+)?[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞])(°?\\p{L}+|%)");
    private static final Pattern RANGE = Pattern.compile("(\\d+(?:\\.\\d+)?)[-–—](\\d+(?:\\.\\d+)?)");
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(?:,\\d{3})++");

    /**
     * Recognisers leave apostrophes out ("its" and "thats" are nearly always "it is" and "that is"), and some Englishes
     * have words of their own for these small ones. From listening; no source.
     */
    private static final Map<String, List<String>> VARIANTS = Map.ofEntries(
            entry("its", List.of("it", "is")),
            entry("thats", List.of("that", "is")),
            entry("theres", List.of("there", "is")),
            entry("heres", List.of("here", "is")),
            entry("whats", List.of("what", "is")),
            entry("mines", List.of("mine", "is")),
            entry("whos", List.of("who", "is")),
            entry("hes", List.of("he", "is")),
            entry("shes", List.of("she", "is")),
            entry("cant", List.of("can't")),
            entry("dont", List.of("don't")),
            entry("ive", List.of("i've")),
            entry("im", List.of("i'm")),
            entry("youre", List.of("you're")),
            entry("youve", List.of("you've")),
            entry("ye", List.of("you")),
            entry("ye'd", List.of("you'd")),
            entry("ye'll", List.of("you'll")),
            entry("ye're", List.of("you're")),
            entry("ye've", List.of("you've")),
            entry("yous", List.of("you")),
            entry("y'all", List.of("you")),
            entry("gonna", List.of("going", "to")),
            entry("wanna", List.of("want", "to")),
            entry("gotta", List.of("got", "to")),
            entry("wee", List.of("little")),
            entry("meself", List.of("myself")),
            entry("havent", List.of("haven't")),
            entry("isnt", List.of("isn't")),
            entry("wasnt", List.of("wasn't")),
            entry("didnt", List.of("didn't")),
            entry("doesnt", List.of("doesn't")),
            entry("youll", List.of("you'll")),
            entry("theyre", List.of("they're")),
            entry("weve", List.of("we've")),
            entry("theyve", List.of("they've")),
            entry("shouldnt", List.of("shouldn't")),
            entry("couldnt", List.of("couldn't")));

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
        return !word.isEmpty() && !word.endsWith("ish") && !VARIANTS.containsKey(word);
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

    /** "butter's" is "butter is": what follows may be its amount. */
    private static void addWord(String part, List<String> texts) {
        if (part.isEmpty()) {
            return;
        }
        if (VARIANTS.containsKey(part)) {
            texts.addAll(VARIANTS.getOrDefault(part, List.of()));
        } else if (part.endsWith("ish") && NumberWords.isOne(part.substring(0, part.length() - 3))) {
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
