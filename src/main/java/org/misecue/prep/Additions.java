package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * In how many additions a step takes an ingredient: "fold in the flour in two additions, with the milk after each". Each
 * addition has its own bowl, because on camera nobody divides by eye. What goes in "a little at a time" or piece by piece
 * comes from one bowl.
 */
final class Additions {

    private static final Pattern COUNT =
            Pattern.compile("\\bin (?:about |roughly )?(?<number>two|three|four|five|six|[2-6])[ -](?:equal |even )?"
                    + "(?:additions|batches|goes|lots|parts|portions|stages|instal+ments|increments|halves|thirds|quarters)\\b"
                    + "|\\bin (?<parts>halves|thirds|quarters)\\b|\\b(?:a )?(?<each>half|third|quarter) at a time\\b");
    private static final Pattern VERB = Pattern.compile(
            "\\b(?:(?<adds>add|fold|stir|mix|beat|whisk|pour|sift|sprinkl|incorporat|spoon|tip|work|drizzl|sieve)"
                    + "|bak|fry|fri|cook|roast|toast|blend|process|divid|split|cut|roll|shap|knead|poach)\\p{L}*");
    private static final Pattern AFTER_EACH = Pattern.compile("^[^.;]{0,40}?\\b(?:after|between) each\\b");
    private static final Pattern ALTERNATING = Pattern.compile("\\balternat(?:e|ing|ely) with\\b");
    private static final Pattern SENTENCE_END = Pattern.compile("[.;!](?=\\s|$)|$");

    private static final Map<String, Integer> NUMBERS = Map.ofEntries(
            Map.entry("two", 2),
            Map.entry("half", 2),
            Map.entry("halves", 2),
            Map.entry("three", 3),
            Map.entry("third", 3),
            Map.entry("thirds", 3),
            Map.entry("four", 4),
            Map.entry("quarter", 4),
            Map.entry("quarters", 4),
            Map.entry("five", 5),
            Map.entry("six", 6));

    /** A count of additions in a sentence. */
    private record Said(int start, int end, int number) {}

    private Additions() {}

    /** 1 for what goes in at once, from 2 to 6 for what goes in by parts. */
    static int of(String text, String ingredient) {
        String lower = text.toLowerCase(Locale.ROOT);
        int from = 0;
        for (MatchResult end : SENTENCE_END.matcher(lower).results().toList()) {
            String sentence = lower.substring(from, end.start());
            OptionalInt place = StepWords.whereNamed(sentence, ingredient);
            List<Said> said = counts(sentence);
            if (place.isPresent() && !said.isEmpty()) {
                return Math.max(1, inSentence(sentence, place.getAsInt(), said));
            }
            from = end.start();
        }
        return 1;
    }

    private static List<Said> counts(String sentence) {
        List<Said> said = new ArrayList<>();
        Matcher matcher = COUNT.matcher(sentence);
        while (matcher.find()) {
            String word = Stream.of("number", "parts", "each")
                    .map(matcher::group)
                    .filter(Objects::nonNull)
                    .findFirst()
                    .orElse("");
            int number = NUMBERS.containsKey(word) ? NUMBERS.get(word) : Integer.parseInt(word);
            said.add(new Said(matcher.start(), matcher.end(), number));
        }
        return said;
    }

    /** A count belongs to what stands between it and the verb before it; what follows may be tied to it. */
    private static int inSentence(String sentence, int place, List<Said> said) {
        for (Said count : said) {
            if (place < count.start()) {
                int verb = verbOfAdding(sentence, 0, count.start());
                return verb >= 0 && verb < place ? count.number() : tied(sentence, place, said);
            }
        }
        return tied(sentence, place, said);
    }

    private static int tied(String sentence, int place, List<Said> said) {
        int number = 1;
        for (Said count : said) {
            if (count.end() <= place) {
                String between = sentence.substring(count.end(), place);
                boolean first = verbOfAdding(sentence, 0, count.start()) < 0;
                if (AFTER_EACH.matcher(sentence.substring(place)).find()
                        || (first && verbOfAdding(sentence, count.end(), place) >= 0)) {
                    number = count.number();
                } else if (ALTERNATING.matcher(between).find()) {
                    number = count.number() - 1; // begins and ends with the other
                }
            }
        }
        return number;
    }

    /** Where the last verb of a stretch stands, if it is one of adding: what is baked in two batches is added at once. */
    private static int verbOfAdding(String sentence, int from, int to) {
        int at = -1;
        Matcher verb = VERB.matcher(sentence).region(from, to);
        while (verb.find()) {
            at = verb.group("adds") == null ? -1 : verb.start();
        }
        return at;
    }
}
