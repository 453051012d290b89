package org.misecue.prep;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** Reads "half", "two thirds of", "a quarter", "¾" as fractions. */
final class ShareWords {

    private static final Pattern FRACTION = Pattern.compile(
            "(?<sign>[½⅓⅔¼¾])|(?:(?<top>a|one|two|three|1|2|3)[ -])?(?<part>half|third|quarter|fifth)s?\\b");

    private static final Map<String, RationalNumber> SIGNS = Map.of(
            "½", Rationals.of(1, 2),
            "⅓", Rationals.of(1, 3),
            "⅔", Rationals.of(2, 3),
            "¼", Rationals.of(1, 4),
            "¾", Rationals.of(3, 4));

    private static final Map<String, Long> PARTS = Map.of("half", 2L, "third", 3L, "quarter", 4L, "fifth", 5L);

    private static final Map<String, Long> TOPS =
            Map.of("a", 1L, "one", 1L, "1", 1L, "two", 2L, "2", 2L, "three", 3L, "3", 3L);

    private ShareWords() {}

    static Optional<RationalNumber> fraction(String words) {
        Matcher matcher = FRACTION.matcher(words.toLowerCase(Locale.ROOT));
        if (!matcher.find()) {
            return Optional.empty();
        }
        String sign = matcher.group("sign");
        if (sign != null) {
            return Optional.ofNullable(SIGNS.get(sign));
        }
        long top = Optional.ofNullable(matcher.group("top"))
                .map(word -> TOPS.getOrDefault(word, 1L))
                .orElse(1L);
        return Optional.of(Rationals.of(top, PARTS.getOrDefault(matcher.group("part"), 1L)));
    }

    /** Whether the fraction is one of what is left: "half of the remaining milk". */
    static boolean ofWhatIsLeft(String words) {
        return words.toLowerCase(Locale.ROOT)
                .matches(".*(half|third|quarter|fifth)s? (of )?(the )?(rest|remaining|remainder).*");
    }
}
