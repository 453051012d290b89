package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is taken of something that is counted: "the finely grated zest of 2 lemons", "whites of 4 eggs", "rind and juice
 * of 1 orange".
 *
 * @param part what one would look for, "zest"; empty where two parts are taken, for then it is the whole fruit
 * @param preparation how it is taken; of two parts, both; and a part of another fruit named behind it
 * @param rest the fruit with its amount
 */
record FruitPart(String part, List<String> preparation, String rest) {

    static final String WORDS = "zest|rind|peel|juice|seeds|pulp|flesh|leaves|whites?|yolks?";

    private static final String HOW = "(?:(?:\\p{L}+(?:ly|ed)|beaten)\\h+)*+";
    private static final Pattern PATTERN = Pattern.compile(
            "^(?:the\\h+)?(?<how>" + HOW + ")(?<part>" + WORDS + ")(?<second>\\h*(?:and|&|\\+)\\h*" + HOW + "(?:"
                    + WORDS
                    + "))?(?<taken>\\h+\\p{L}+ed)?\\h+(?:(?:of|from)\\h+|(?=[\\d½¼¾]|half\\b|one\\b|two\\b))(?<rest>.+)$",
            Pattern.CASE_INSENSITIVE);
    /** "Lemon juice: ½ lemon", "zest – 2 oranges". */
    private static final Pattern PART_FIRST = Pattern.compile(
            "^(?:(?<fruit>\\p{L}+)\\h+(?<its>" + WORDS + ")|(?<part>" + WORDS + "))\\h*[:=–—-]\\h*"
                    + "(?<rest>(?:[\\d½¼¾]|half\\b|one\\b|two\\b).*?\\p{L}.*)$",
            Pattern.CASE_INSENSITIVE);
    /** "Zest of one lemon and juice of half". */
    private static final Pattern ANOTHER = Pattern.compile(
            "\\h+(?=(?:and|plus|&|\\+)\\h+(?:the\\h+)?" + HOW + "(?:" + WORDS + ")\\h+(?:of|from)\\b)",
            Pattern.CASE_INSENSITIVE);

    /** "Half the zest of a lemon" takes half a lemon. */
    private static final Pattern HALF_OF_ONE = Pattern.compile(
            "^half\\h+(?:of\\h+)?(the\\h+\\p{L}.*?\\h(?:of|from)\\h+)(?=an?\\h)", Pattern.CASE_INSENSITIVE);

    static Optional<FruitPart> in(String line) {
        String text = HALF_OF_ONE.matcher(line).replaceFirst("$1half ");
        Matcher found = PATTERN.matcher(text);
        return found.matches() ? Optional.of(of(found)) : partFirst(text);
    }

    private static Optional<FruitPart> partFirst(String text) {
        Matcher found = PART_FIRST.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        String rest = found.group("rest");
        String fruit = found.group("fruit");
        String part = fruit == null ? found.group("part") : found.group("its");
        return fruit == null || rest.toLowerCase(Locale.ROOT).contains(fruit.toLowerCase(Locale.ROOT))
                ? Optional.of(new FruitPart(part.toLowerCase(Locale.ROOT), List.of(), rest))
                : Optional.empty();
    }

    private static FruitPart of(Matcher found) {
        String how = found.group("how").strip().toLowerCase(Locale.ROOT);
        String part = found.group("part").toLowerCase(Locale.ROOT);
        String[] rest = ANOTHER.split(found.group("rest"), 2);
        List<String> preparation = new ArrayList<>();
        if (found.group("second") != null) {
            preparation.add((how + " " + part + found.group("second")).strip().toLowerCase(Locale.ROOT));
        } else if (!how.isEmpty()) {
            preparation.add(how);
        }
        if (found.group("taken") != null) {
            preparation.add(found.group("taken").strip());
        }
        preparation.addAll(List.of(rest).subList(1, rest.length));
        return new FruitPart(found.group("second") == null ? part : "", preparation, rest[0]);
    }

    /** The name of what is taken, of a fruit by its name. */
    String of(String fruit) {
        return part.isEmpty() ? fruit : Nouns.singular(fruit) + " " + part;
    }
}
