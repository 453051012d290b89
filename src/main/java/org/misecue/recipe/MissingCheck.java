package org.misecue.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;

/**
 * What the method adds and the list does not name. Only a name of the pantry right behind a word of adding counts, as in
 * "stir in the buttermilk" or "add 2 tbsp of rum"; water and what the recipe itself makes do not.
 */
final class MissingCheck implements RecipeCheck {

    private static final Pattern ADDED = Pattern.compile(
            "\\b(?:add|(?:stir|fold|beat|whisk|mix|rub|sift|blend) in)\\s+(?:(?:the|a little|some|about|another|remaining|all)\\s+)*"
                    + "(?:[\\d½¼¾⅓⅔⅛/.]+\\s*(?:g|kg|ml|l|oz|tsp|tbsp|cups?|teaspoons?|tablespoons?)\\s+(?:of\\s+)?(?:the\\s+)?)?"
                    + "(?<names>\\p{L}+(?:[ -]\\p{L}+){0,3})",
            Pattern.CASE_INSENSITIVE);
    private static final Set<String> ALWAYS_THERE = Set.of("water", "ice", "boiling water", "cold water", "air");
    private static final Pattern MADE = Pattern.compile(
            ".*\\b(?:mix(?:ture)?|batter|dough|icing|cream|custard|filling|glaze|syrup|sponge|caramel|frosting|buttercream|crumble"
                    + "|crumbs|meringue|compote|purée|puree|paste|wash|ganache|ingredients|liquid|sauce|pastry|jam|wet|dry)\\b.*",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    @Override
    public List<Note> notes(Recipe recipe) {
        Set<Ingredient> listed = new HashSet<>();
        StringBuilder all = new StringBuilder(recipe.title().toLowerCase(Locale.ROOT));
        recipe.components().forEach(part -> all.append(' ').append(part.name().toLowerCase(Locale.ROOT)));
        for (IngredientLine line : recipe.lines()) {
            all.append(' ').append(line.text().toLowerCase(Locale.ROOT));
            Pantry.standard().find(line.ingredient()).ifPresent(listed::add);
            line.alternatives().forEach(other -> Pantry.standard().find(other).ifPresent(listed::add));
        }
        List<Note> notes = new ArrayList<>();
        Set<Ingredient> told = new HashSet<>();
        for (Step step : recipe.steps()) {
            Matcher added = ADDED.matcher(step.text());
            while (added.find()) {
                name(added.group("names"))
                        .filter(known -> !listed.contains(known) && !isIn(all, added.group("names")))
                        .filter(told::add)
                        .ifPresent(known -> notes.add(new Note(
                                Place.of(recipe.source(), step.line()),
                                "step %d adds %s, which is not on the list; put it there with its amount."
                                        .formatted(step.number(), known.name()))));
            }
        }
        return List.copyOf(notes);
    }

    /** The longest name of the pantry that these words begin with. */
    private static Optional<Ingredient> name(String words) {
        if (MADE.matcher(words).matches()) {
            return Optional.empty();
        }
        String[] each = words.toLowerCase(Locale.ROOT).split("[ -]", -1);
        for (int end = each.length; end > 0; end--) {
            String name = String.join(" ", List.of(each).subList(0, end));
            if (ALWAYS_THERE.contains(name)) {
                return Optional.empty();
            }
            Optional<Ingredient> known = Pantry.standard().heardAs(name);
            if (known.isPresent()) {
                return known;
            }
        }
        return Optional.empty();
    }

    /** Whether one of the words stands anywhere in the list: "the seeds" of what is listed as sesame seeds. */
    private static boolean isIn(StringBuilder all, String names) {
        for (String word : names.toLowerCase(Locale.ROOT).split("[ -]", -1)) {
            String stem = Nouns.singular(word);
            if (stem.length() > 2 && all.indexOf(stem) >= 0) {
                return true;
            }
        }
        return false;
    }
}
