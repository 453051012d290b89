package org.misecue.spoken;

import com.ibm.icu.text.RuleBasedNumberFormat;
import com.ibm.icu.util.ULocale;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Every way in which a number is said or written down by a recogniser, as far as we know them: common practice, no source.
 * Numbers under a hundred are spelled by ICU4J 78.1.
 */
final class SpokenForms {

    private static final RuleBasedNumberFormat SPELLER =
            new RuleBasedNumberFormat(ULocale.ENGLISH, RuleBasedNumberFormat.SPELLOUT);
    private static final Map<Integer, String> DIVISORS =
            Map.of(2, "half", 3, "third", 4, "quarter", 5, "fifth", 6, "sixth", 8, "eighth", 10, "tenth");
    private static final List<String> NOUGHTS = List.of("oh", "zero", "nought");

    private SpokenForms() {}

    /** One to 9,999. */
    static Set<String> whole(int n) {
        Set<String> forms = new LinkedHashSet<>(List.of(String.valueOf(n), String.format(Locale.ROOT, "%,d", n)));
        if (n < 100) {
            forms.addAll(words(n));
        } else if (n < 1000) {
            forms.addAll(hundreds(n / 100, n % 100));
            forms.addAll(sideBySide(n / 100, n % 100));
        } else {
            forms.addAll(thousands(n / 1000, n % 1000));
            if (n / 100 % 10 != 0) {
                forms.addAll(hundreds(n / 100, n % 100));
            }
            if (n < 2000) {
                forms.addAll(sideBySide(n / 100, n % 100));
            }
        }
        forms.addAll(groups(n));
        return forms;
    }

    /** "two and a half", "2 and a half", "2 1/2", "2½". */
    static Set<String> mixed(int whole, int count, int divisor) {
        Set<String> forms = new LinkedHashSet<>();
        for (String head : either(words(whole), String.valueOf(whole))) {
            part(count, divisor).forEach(part -> forms.add(head + " and " + part));
        }
        forms.add(whole + " " + count + "/" + divisor);
        NumberWords.VULGAR.forEach((sign, value) -> {
            if (value[0] == count && value[1] == divisor) {
                forms.add(whole + "" + sign);
                forms.add(whole + " " + sign);
            }
        });
        return forms;
    }

    /** "half", "a half", "one third", "three quarters". */
    static Set<String> part(int count, int divisor) {
        String name = DIVISORS.getOrDefault(divisor, "");
        if (count > 1) {
            return Set.of(word(count) + " " + name + "s");
        }
        Set<String> forms = new LinkedHashSet<>(List.of((divisor == 8 ? "an " : "a ") + name, "one " + name));
        if (divisor == 2) {
            forms.add(name);
        }
        return forms;
    }

    /** "nought point seven five", "point seventy five", "0.75", "2 point 5"; the digits without trailing noughts. */
    static Set<String> decimal(int whole, String digits) {
        Set<String> forms = new LinkedHashSet<>(List.of(whole + "." + digits));
        Set<String> heads =
                whole == 0 ? Set.of("", "zero", "nought", "0") : either(words(whole), String.valueOf(whole));
        Set<String> tails = new LinkedHashSet<>(List.of(digits));
        for (String nought : NOUGHTS) {
            tails.add(digits.chars()
                    .mapToObj(digit -> digit == '0' ? nought : word(digit - '0'))
                    .collect(Collectors.joining(" ")));
        }
        if (digits.matches("[1-9]\\d")) {
            tails.addAll(words(Integer.parseInt(digits)));
        }
        heads.forEach(head -> tails.forEach(tail -> forms.add((head + " point " + tail).strip())));
        return forms;
    }

    /** "twenty five to thirty", "between 5 and six"; both ends under a hundred. */
    static Set<String> range(int low, int high) {
        Set<String> forms = new LinkedHashSet<>(List.of(low + "-" + high, low + "–" + high));
        for (String from : either(words(low), String.valueOf(low))) {
            for (String to : either(words(high), String.valueOf(high))) {
                forms.addAll(List.of(from + " to " + to, from + " or " + to, "between " + from + " and " + to));
            }
        }
        if (low >= 10 && 2 * high <= 3 * low && isStep(low, high)) {
            forms.add(word(low) + " " + word(high));
            forms.add(word(low) + " uh " + word(high));
        }
        return forms;
    }

    /** "ten twelve", "twenty twenty five", but not "seventy four seventy eight": those the scales run through. */
    private static boolean isStep(int low, int high) {
        boolean round = low % 5 == 0 && high % 5 == 0;
        return high - low == 1 || (high - low == 2 && low < 30) || (round && high - low <= 10);
    }

    /** "two to three hundred": both ends share the hundred; one to nine. */
    static Set<String> rangeOfHundreds(int low, int high) {
        String ends = " to " + word(high) + " hundred";
        return Set.of(word(low) + ends, word(low) + " hundred" + ends, low + ends);
    }

    private static Set<String> hundreds(int count, int rest) {
        Set<String> heads = new LinkedHashSet<>(List.of(word(count) + " hundred", count + " hundred"));
        if (count == 1) {
            heads.addAll(List.of("a hundred", "hundred"));
        }
        if (rest == 0) {
            return heads;
        }
        Set<String> forms = new LinkedHashSet<>();
        Set<String> tails = rest < 10 ? words(rest) : either(words(rest), String.valueOf(rest));
        for (String tail : tails) {
            heads.forEach(head -> forms.addAll(List.of(head + " " + tail, head + " and " + tail)));
            if (rest >= 10) {
                forms.add(count * 100 + " and " + tail);
            }
        }
        return forms;
    }

    /** "one twenty five", "one 70", "one oh five", "twelve fifty"; "twelve fifteen" is a range and not among them. */
    private static Set<String> sideBySide(int count, int rest) {
        Set<String> forms = new LinkedHashSet<>();
        if (rest >= 10 && (count < 10 || rest < count || 2 * rest > 3 * count)) {
            either(words(rest), String.valueOf(rest)).forEach(tail -> forms.add(word(count) + " " + tail));
        } else if (rest > 0 && count < 10) {
            forms.add(word(count) + " oh " + word(rest));
        }
        return forms;
    }

    private static Set<String> thousands(int count, int rest) {
        Set<String> heads = new LinkedHashSet<>(List.of(word(count) + " thousand", count + " thousand"));
        if (count == 1) {
            heads.add("a thousand");
        }
        Set<String> tails = rest >= 100
                ? new LinkedHashSet<>(
                        List.of(spelled(rest, "%spellout-numbering-verbose"), spelled(rest, "%spellout-numbering")))
                : rest == 0 ? Set.of() : words(rest);
        Set<String> forms = new LinkedHashSet<>(rest == 0 ? heads : Set.of());
        heads.forEach(head -> tails.forEach(tail -> forms.addAll(List.of(head + " " + tail, head + " and " + tail))));
        return forms;
    }

    private static Set<String> groups(int n) {
        Set<String> forms = new LinkedHashSet<>();
        if (n == 2) {
            forms.addAll(List.of("a couple of", "a pair of"));
        }
        if (n == 6) {
            forms.add("half a dozen");
        }
        if (n == 12) {
            forms.add("a dozen");
        }
        if (n % 12 == 0 && n / 12 < 10) {
            forms.add(word(n / 12) + " dozen");
        }
        return forms;
    }

    private static Set<String> words(int n) {
        String spelled = spelled(n, "%spellout-numbering");
        return new LinkedHashSet<>(List.of(spelled, spelled.replace('-', ' ')));
    }

    private static String word(int n) {
        return spelled(n, "%spellout-numbering").replace('-', ' ');
    }

    private static String spelled(int n, String rules) {
        return SPELLER.format(n, rules);
    }

    private static Set<String> either(Set<String> words, String digits) {
        return Stream.concat(words.stream(), Stream.of(digits)).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
