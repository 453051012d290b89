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

    private static final String WORDS = "zest|rind|peel|juice|seeds|pulp|flesh|leaves|whites?|yolks?";

    private static final String HOW = "(?:(?:\\p{L}+(?:ly|ed)|beaten)\\h+)*+";
    private static final Cued PATTERN = Cued.inAnyCase(
            "^(?:the\\h+)?(?<how>" + HOW + ")(?<part>" + WORDS + ")(?<second>\\h*(?:and|&|\\+)\\h*" + HOW + "(?:"
                    + WORDS
                    + "))?(?<taken>\\h+\\p{L}+ed)?\\h+(?:(?:of|from)\\h+|(?=[\\d½¼¾]|half\\b|one\\b|two\\b))(?<rest>.+)$");
    private static final Pattern PART = Pattern.compile(WORDS);
    /** "Lemon juice: ½ lemon", "zest – 2 oranges". */
    private static final Cued PART_FIRST = Cued.inAnyCase("^(?:(?<fruit>\\p{L}+)\\h+(?<its>" + WORDS + ")|(?<part>"
            + WORDS + "))\\h*[:=–—-]\\h*" + "(?<rest>(?:[\\d½¼¾]|half\\b|one\\b|two\\b).*?\\p{L}.*)$");
    /** "Zest of one lemon and juice of half". */
    private static final Pattern ANOTHER = Pattern.compile(
            "\\h+(?=(?:and|plus|&|\\+)\\h+(?:the\\h+)?" + HOW + "(?:" + WORDS + ")\\h+(?:of|from)\\b)",
            Pattern.CASE_INSENSITIVE);

    /** "Half the zest of a lemon" takes half a lemon. */
    private static final Cued HALF_OF_ONE =
            Cued.inAnyCase("^half\\h+(?:of\\h+)?(the\\h+\\p{L}.*?\\h(?:of|from)\\h+)(?=an?\\h)");

    static boolean isPart(String word) {
        return PART.matcher(word).matches();
    }

    static Optional<FruitPart> in(Wording line) {
        Wording text = HALF_OF_ONE.replaceFirst(line, "$1half ");
        return PATTERN.whole(text).map(FruitPart::of).or(() -> partFirst(text));
    }

    private static Optional<FruitPart> partFirst(Wording text) {
        return PART_FIRST.whole(text).flatMap(FruitPart::partFirst);
    }

    private static Optional<FruitPart> partFirst(Matcher found) {
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
