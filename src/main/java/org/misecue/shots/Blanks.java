package org.misecue.shots;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.prep.Wording;

/**
 * What a recipe puts into the texts of a template.
 *
 * @param values the words for each name; empty where the recipe has none
 */
record Blanks(Map<String, String> values) {

    static final String INGREDIENTS = "ingredients";
    static final String FOOD = "food";
    static final String AMOUNTS = "amounts";
    static final String SETTINGS = "settings";
    static final String TIN = "tin";
    static final String METHOD = "method";
    static final String UNTIL = "until";
    static final String DISH = "dish";
    static final String YIELD = "yield";
    static final List<String> NAMES = List.of(INGREDIENTS, FOOD, AMOUNTS, SETTINGS, TIN, METHOD, UNTIL, DISH, YIELD);

    /** What stands for the end of an action where the method tells none. */
    private static final String TO_THE_END = "to the end";

    private static final Pattern BLANK = Pattern.compile("\\{([a-z]+)}");
    private static final String DOT = " · ";

    String fill(String text) {
        return BLANK.matcher(text).replaceAll(blank -> Matcher.quoteReplacement(words(blank.group(1))));
    }

    private String words(String name) {
        String words = values.getOrDefault(name, "");
        return words.isEmpty() && name.equals(UNTIL) ? TO_THE_END : words;
    }

    /** A lower third; its parts between dots are left out where the recipe has no words for them. */
    String title(String text) {
        return Wording.upperFirst(Arrays.stream(text.split(Pattern.quote(DOT)))
                .filter(part -> BLANK.matcher(part).results().allMatch(this::isFilled))
                .map(this::fill)
                .collect(Collectors.joining(DOT)));
    }

    private boolean isFilled(MatchResult blank) {
        return !values.getOrDefault(blank.group(1), "").isEmpty();
    }
}
