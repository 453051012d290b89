package org.misecue.prep;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;

/**
 * Tells a name that asks for more of an ingredient from one that means what was made of it: after "roast the plums", "set
 * the plums on top" takes the roasted ones. Where the words do not tell, the use stays, and a note asks.
 */
final class LaterNames {

    /** What the words before a name do with the thing: make something of it, or put it into something else. */
    private static final Pattern DEED = Pattern.compile(
            "\\b(?:(?<into>with|add\\p{L}*|fold\\p{L}*|scatter\\p{L}*|sprinkl\\p{L}*|dust\\p{L}*|brush\\p{L}*|drizzl\\p{L}*|spread\\p{L}*"
                    + "|top|spoon over|pour over|(?:stir|beat|mix|whisk|rub|work|knead|pour|tip|sift) in)"
                    + "|mix|whisk|beat|whip|cream|combine|sift|stir|rub|roast|bake|toast|melt|warm|heat|scald|boil|simmer|brew|soak"
                    + "|steep|infuse|chop|cut|slice|halve|quarter|peel|core|stone|grate|mash|crush|blend|pur[ée]+|strain|cook|stew|poach"
                    + "|soften|bloom|dissolve|dice|hull|drain|separate|put|place|lay|arrange|tip|pour|measure|weigh|caramelise|macerate)\\b");

    private static final Pattern LET_IN = Pattern.compile(
            "^[^.;]*?\\b(?:into|through|onto|over(?! (?:an? |the )?(?:\\p{L}+ ){0,2}(?:water|heat|flame|pan)\\b))\\b");
    private static final Pattern MADE = Pattern.compile(
            "\\b(?:roasted|baked|toasted|melted|warmed?|hot|cold|cooled|scalded|boiled"
                    + "|simmered|brewed|soaked|steeped|infused|plumped|chopped|sliced|grated|mashed|crushed|blended|strained|cooked|stewed"
                    + "|poached|softened|bloomed|whipped|whisked|beaten|creamed|caramelised|macerated|browned|drained|chilled|set)\\h+(?:\\p{L}+\\h+)?$");
    private static final Pattern COME_OF_IT =
            Pattern.compile("^\\p{L}+\\h+(?:juices?|syrup|mixture|pur[ée]+e?|pulp|compote|liquid|water)\\b");
    private static final Pattern WORD_BEFORE = Pattern.compile("([\\p{L}-]+)\\h+$");

    private LaterNames() {}

    /** The uses that take from the line itself. */
    static List<ShareOut.StepUse> takingFrom(String ingredient, List<ShareOut.StepUse> uses, Recipe recipe) {
        if (uses.size() < 2 || !isWhole(uses.get(0))) {
            return uses;
        }
        ShareOut.StepUse first = uses.get(0);
        return uses.stream()
                .filter(use -> use.step() == first.step()
                        || !isWhole(use)
                        || !(meansAnother(text(use, recipe), ingredient, recipe)
                                || isMade(text(first, recipe), text(use, recipe), ingredient)))
                .toList();
    }

    private static boolean isWhole(ShareOut.StepUse use) {
        return use.use().part().isEmpty() && use.use().words().isBlank();
    }

    private static String text(ShareOut.StepUse use, Recipe recipe) {
        return recipe.steps().stream()
                .filter(step -> step.number() == use.step())
                .map(Step::text)
                .findFirst()
                .orElse("")
                .toLowerCase(Locale.ROOT);
    }

    /** "The plum juice" is not the lemon juice: the word before the name is another ingredient's. */
    private static boolean meansAnother(String later, String ingredient, Recipe recipe) {
        String name = ingredient.toLowerCase(Locale.ROOT);
        OptionalInt place = StepWords.whereNamed(later, ingredient);
        if (place.isEmpty() || later.startsWith(name, place.getAsInt())) {
            return false;
        }
        Matcher before = WORD_BEFORE.matcher(later.substring(0, place.getAsInt()));
        if (!before.find() || StepWords.whereNamed(name, before.group(1)).isPresent()) {
            return false;
        }
        return recipe.lines().stream()
                .anyMatch(line -> !line.ingredient().equalsIgnoreCase(ingredient)
                        && StepWords.whereNamed(line.ingredient(), before.group(1))
                                .isPresent()
                        && StepWords.whereNamed(before.group(1), line.ingredient())
                                .isPresent());
    }

    private static boolean isMade(String first, String later, String ingredient) {
        OptionalInt again = StepWords.whereNamed(later, ingredient);
        if (again.isPresent()
                && MADE.matcher(later.substring(0, again.getAsInt())).find()) {
            return true;
        }
        if (again.isPresent()
                && COME_OF_IT.matcher(later.substring(again.getAsInt())).find()) {
            return true;
        }
        OptionalInt place = StepWords.whereNamed(first, ingredient);
        if (place.isEmpty() || LET_IN.matcher(first.substring(place.getAsInt())).find()) {
            return false;
        }
        boolean made = false;
        Matcher deed = DEED.matcher(first.substring(sentence(first, place.getAsInt()), place.getAsInt()));
        while (deed.find()) {
            made = deed.group("into") == null;
        }
        return made;
    }

    private static int sentence(String text, int place) {
        return Math.max(text.lastIndexOf(". ", place), text.lastIndexOf("; ", place)) + 1;
    }
}
