package org.misecue.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tech.units.indriya.function.RationalNumber;

/** A number in words as recipes write it: "two", "half a", "three quarters of a", "one and a half", "a dozen". */
final class NumberWords {

    private static final List<String> COUNTED = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final Map<String, Integer> PARTS =
            Map.of("half", 2, "halve", 2, "third", 3, "quarter", 4, "eighth", 8);

    private static final List<String> TENS =
            List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    private static final String BELOW_TWENTY = String.join("|", COUNTED.subList(1, COUNTED.size()));
    private static final String BELOW_HUNDRED = "(?:(?:" + String.join("|", TENS) + ")(?:[\\h-](?:"
            + String.join("|", COUNTED.subList(1, 10)) + "))?|" + BELOW_TWENTY + ")";
    private static final String HUNDREDS =
            "(?:(?:(?:an?|" + BELOW_TWENTY + ")[\\h-])?hundred(?:[\\h-]+and[\\h-]+" + BELOW_HUNDRED + ")?)";
    private static final String THOUSANDS = "(?:(?:an?|" + BELOW_TWENTY + ")[\\h-]thousand(?:\\h+" + HUNDREDS + ")?)";
    /** Longest first, so that "two hundred" is never read as two. */
    private static final String COUNT = "(?:" + THOUSANDS + "|" + HUNDREDS + "|" + BELOW_HUNDRED + "|an?)";

    private static final String SHARE =
            "(?:(?:(?:an?|one|two|three|five|seven)[\\h-]+)?(?:half|halve|third|quarter|eighth)s?)";
    private static final Shape SETS = word("(?:(" + COUNT + "|half[\\h-]+a)[\\h-]+)(dozen|couple|pair)(?:\\h+of)?");
    private static final Shape MIXED = word("(" + COUNT + ")[\\h-]+and[\\h-]+(" + SHARE + ")");
    private static final Shape PART = word("(" + SHARE + ")(?:\\h+of)?(?:\\h+an?)?");
    private static final Shape WHOLE = word("(" + COUNT + ")");

    /** Each word that a number can begin with. */
    static final Set<String> FIRST = Stream.of(
                    COUNTED.stream(),
                    TENS.stream(),
                    PARTS.keySet().stream(),
                    PARTS.keySet().stream().map(part -> part + "s"),
                    Stream.of("a", "an", "hundred"))
            .flatMap(words -> words)
            .collect(Collectors.toUnmodifiableSet());

    private NumberWords() {}

    /** Reads number words that stand here; leaves the cursor alone where there are none. */
    static Optional<RationalNumber> take(Cursor cursor) {
        return FIRST.contains(cursor.word()) ? read(cursor) : Optional.empty();
    }

    private static Optional<RationalNumber> read(Cursor cursor) {
        return cursor.take(SETS)
                .map(found -> count(found.group(1))
                        .multiply(Rationals.of(found.group(2).startsWith("d") ? 12 : 2)))
                .or(() -> cursor.take(MIXED).map(found -> count(found.group(1)).add(share(found.group(2)))))
                .or(() -> cursor.take(PART).map(found -> share(found.group(1))))
                .or(() -> cursor.take(WHOLE).map(found -> count(found.group(1))));
    }

    private static RationalNumber count(String words) {
        String plain = words.toLowerCase(Locale.ROOT);
        if (plain.startsWith("half")) {
            return Rationals.of(1, 2);
        }
        long thousands = 0;
        long sum = 0;
        for (String word : plain.split("[\\h-]+", -1)) {
            if (word.equals("hundred")) {
                sum = Math.max(1, sum) * 100;
            } else if (word.equals("thousand")) {
                thousands = Math.max(1, sum) * 1000;
                sum = 0;
            } else if (TENS.contains(word)) {
                sum += 10L * (TENS.indexOf(word) + 2);
            } else if (!word.equals("and")) {
                sum += Math.max(1, COUNTED.indexOf(word));
            }
        }
        return Rationals.of(thousands + sum);
    }

    private static RationalNumber share(String words) {
        String[] parts = words.toLowerCase(Locale.ROOT).split("[\\h-]+", 2);
        String name = parts[parts.length - 1].replaceFirst("s$", "");
        RationalNumber one = Rationals.of(1, PARTS.getOrDefault(name, 2));
        return parts.length == 1 ? one : count(parts[0]).multiply(one);
    }

    private static Shape word(String regex) {
        return Shape.inAnyCase(
                regex
                        + "(?![\\p{L}\\d]|-(?!(?:grams?|g|ounces?|oz|pounds?|lb|inch|cm|centimetre|ml|litre|pint)\\b)|\\h+(?:hundred|thousand)\\b|(?<=half)\\h+(?:fat|and\\h+half))");
    }
}
