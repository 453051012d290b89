package org.misecue.recipe;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.WrittenQuantity;

/**
 * An amount that stands behind the name: "Butter – 100 g", "flour: 200 g, sifted".
 *
 * @param amount what was read
 * @param rest the line without it
 */
record AmountBehind(WrittenQuantity amount, String rest) {

    private static final String HEDGE = "(?:about|approx(?:\\.|imately)?|around|roughly|circa|abt\\.?|ca\\.?|c\\.|~)";
    private static final String LOOSE =
            "(?:(?:an?|good|big|large|small|generous|tiny)\\h+){0,2}(?:pinch|handful|splash|dash|drizzle|knob|few\\h+(?:(?:table|tea)spoons|drops|strands|sprigs|leaves|threads|grains|grates|grinds|twists)|couple\\h+of\\h+(?:drops|strands)|little)\\b";
    private static final String NUMBER_WORD =
            "(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half|quarter)\\h";
    /** What divides name and amount; before an amount in words it must be more than a blank. */
    private static final Pattern START = Pattern.compile(
            "(?:\\h*(?:[;,=|→–—-]|(?<!\\d):)\\h*|\\h+/\\h+|\\h+x\\h*|\\h+)(?=(?:" + HEDGE
                    + "\\h*)?(?:[\\d½¼¾⅓⅔⅛]|\\.\\d)|half\\h+(?:an?|pt|pint|lb|pound|tsp|tbsp|teaspoon|tablespoon|cup|kilo|litre)\\h|"
                    + LOOSE + ")"
                    + "|(?:\\h*[:;=|–—]\\h*|,\\h+|\\h-+\\h)(?=(?:" + HEDGE + "\\h+)?" + NUMBER_WORD + ")",
            Pattern.CASE_INSENSITIVE);
    /** Behind these a number is a name: "type 55", "size 3", "No. 1". */
    private static final Pattern NAMED_BY_NUMBER = Pattern.compile(
            ".*(?:^|\\h)(?:type|typ|tipo|no\\.?|number|grade|size|t|w|mark|e)", Pattern.CASE_INSENSITIVE);

    /** Behind these an amount is not that of the name: "vinegar to make 1 cup". */
    private static final Pattern LEADS_ON =
            Pattern.compile(".*\\h(?:make|makes|into|in|with|for|from|of|to|by|and|plus)", Pattern.CASE_INSENSITIVE);
    /** Sorts written in two words that are else written in one. */
    private static final Pattern APART =
            Pattern.compile("\\b(self|full|fast|semi|free|extra)\\h+(?=\\p{L})", Pattern.CASE_INSENSITIVE);

    private static final Pattern FILLED =
            Pattern.compile("heaped|heaping|level|rounded|scant|generous", Pattern.CASE_INSENSITIVE);
    private static final Pattern IN_BRACKETS = Pattern.compile(
            "(?<name>\\p{L}[^,;()]*)\\h[(\\[](?<amount>[^()\\p{L}]*\\d[^()\\]]*)[)\\]](?<notes>(?:[,;].*)?)");
    private static final Set<String> SIZES = Set.of(
            "large",
            "medium",
            "small",
            "big",
            "extra-large",
            "extra",
            "med",
            "lg",
            "lge",
            "whole",
            "ripe",
            "fresh",
            "free-range",
            "ground");
    private static final Pattern NOTE = Pattern.compile("[,;(].*");
    /** Notes that follow an amount without a comma. */
    private static final Pattern NOTES = Pattern.compile(
            "\\h*(?:(?:plus|for|to|at|from|in|as|if|or|each|per|depending|according|net|gross|do(?:n['’]?t|\\h+not))\\b|(?:\\p{L}+\\h+)?only\\b|\\d+\\h?(?:cm|mm|inch)).*",
            Pattern.CASE_INSENSITIVE);

    static Optional<AmountBehind> in(String text, QuantityReader quantities) {
        Matcher start = START.matcher(text);
        while (start.find()) {
            String before = text.substring(0, start.start());
            String from = text.substring(start.end());
            Optional<WrittenQuantity> written = before.isBlank()
                            || (start.group().isBlank()
                                    && LEADS_ON.matcher(before).matches())
                    ? Optional.empty()
                    : quantities.read(from).filter(found -> measures(found, before));
            if (written.isPresent()) {
                String behind = from.substring(written.get().end());
                boolean plain = start.group().isBlank();
                if (ends(behind, written.get().quantity(), plain)) {
                    return Optional.of(new AmountBehind(written.get(), rest(before, behind.strip())));
                }
            }
        }
        return inBrackets(text, quantities);
    }

    /** "Butter (250 g), softened". */
    private static Optional<AmountBehind> inBrackets(String text, QuantityReader quantities) {
        Matcher bracket = IN_BRACKETS.matcher(text);
        if (!bracket.matches()) {
            return Optional.empty();
        }
        String inner = bracket.group("amount").strip();
        return quantities
                .read(inner)
                .filter(written -> written.end() == inner.length() && measures(written, bracket.group("name")))
                .map(written -> new AmountBehind(written, bracket.group("name") + bracket.group("notes")));
    }

    /** Name and notes with a comma between them; how a spoon is filled is no note, and a size belongs to the name. */
    private static String rest(String before, String behind) {
        if (behind.isEmpty() || FILLED.matcher(behind).matches()) {
            return before;
        }
        int described = described(behind);
        if (described > 0) {
            return behind.substring(0, described).strip() + " " + NamePhrase.tidy(before) + behind.substring(described);
        }
        return before + (behind.matches("[,;(].*") ? behind : ", " + behind.replaceFirst("^[|/–—-]\\h*", ""));
    }

    /** Where the words end that say which sort is meant, "2 large", "100 g unsalted"; 0 where other words follow. */
    private static int described(String behind) {
        int end = NOTE.matcher(behind).replaceFirst("").length();
        String words = APART.matcher(behind.substring(0, end).strip()).replaceAll("$1-");
        boolean all = Words.split(words).stream()
                .allMatch(word -> SIZES.contains(word.toLowerCase(Locale.ROOT).replaceFirst("\\.$", ""))
                        || Sides.describes(word));
        return all ? end : 0;
    }

    /** Whether the amount ends the line, or only notes follow; behind a measure or a divider a word of doing may follow at once. */
    private static boolean ends(String behind, Quantity quantity, boolean plain) {
        if (behind.isBlank()
                || FILLED.matcher(behind.strip()).matches()
                || described(behind.strip()) > 0
                || behind.matches("\\h*[,;(|–—*†@+&/-].*")) {
            return true;
        }
        boolean measured = quantity.dimension() != Dimension.COUNT;
        return (measured || !plain)
                && (DonePhrase.begins(behind) || NOTES.matcher(behind).matches());
    }

    private static boolean measures(WrittenQuantity written, String before) {
        return switch (written.quantity().dimension()) {
            case MASS, VOLUME, SMIDGEN, COUNT ->
                !NAMED_BY_NUMBER.matcher(before).matches();
            case LENGTH, TEMPERATURE, DURATION -> false;
        };
    }
}
