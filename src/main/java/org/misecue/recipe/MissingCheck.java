package org.misecue.recipe;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;

/**
 * What the method adds and the list does not name. Only a name of the pantry counts, right behind a word of adding, as in
 * "stir in the buttermilk", or by itself as in "the flour, buttermilk and salt"; water and what the recipe makes do not.
 */
final class MissingCheck implements RecipeCheck {

    private static final Cued ADDED = Cued.inAnyCase(
            "\\b(?:add|(?:stir|fold|beat|whisk|mix|rub|sift|blend) in)\\s+(?:(?:the|a little|some|about|another|remaining|all)\\s+){0,4}"
                    + "(?:[\\d½¼¾⅓⅔⅛/.]+\\s*(?:g|kg|ml|l|oz|tsp|tbsp|cups?|teaspoons?|tablespoons?)\\s+(?:of\\s+)?(?:the\\s+)?)?"
                    + "(?<names>\\p{L}+(?:[ -]\\p{L}+){0,3})");
    /** A whole name between an article or a joint of the list before it and a joint of the sentence behind it. */
    private static final Cued NAMED = Cued.inAnyCase(
            "(?:\\bthe |\\bof |, |\\band )(?<names>(?!the |and |then )\\p{L}+(?:[ -](?!and\\b|or\\b|with\\b|in\\b|into\\b|to\\b|until\\b|together\\b|for\\b|over\\b|on\\b)\\p{L}+){0,2})"
                    + "(?=\\s*(?:[.,;)]|$)|\\s+(?:and|or|with|until|to|in|into|over|on|together|then|a|one|through)\\b)");
    /** Pastry is weighed down with beans or rice that nobody eats. */
    private static final Cued BLIND = Cued.inAnyCase("\\b(?:blind|paper|parchment|foil)\\b");

    private static final Cued WEIGHTS = Cued.inAnyCase("\\b(?:beans?|rice|lentils?|pulses)\\b");
    private static final Pattern EGG = Pattern.compile("\\b(?:eggs?|yolks?|whites?)\\b");
    private static final Pattern PIECES = Pattern.compile("[ -]");
    private static final Set<String> ALWAYS_THERE = Set.of("water", "ice", "boiling water", "cold water", "air");
    private static final Cued MADE = Cued.of(Pattern.compile(
            "\\b(?:mix(?:ture)?|batter|dough|icing|cream|custard|filling|glaze|syrup|sponge|caramel|frosting|buttercream|crumble"
                    + "|crumbs|meringue|compote|purée|puree|paste|wash|ganache|ingredients|liquid|sauce|pastry|jam|wet|dry)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));

    /**
     * Words that may name something.
     *
     * @param alone whether no word of adding stands before them
     */
    private record Named(String words, boolean alone) {}

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        List<Ingredient> listed = new ArrayList<>();
        StringBuilder all = new StringBuilder(recipe.title().toLowerCase(Locale.ROOT));
        recipe.components().forEach(part -> all.append(' ').append(part.name().toLowerCase(Locale.ROOT)));
        for (IngredientLine line : recipe.lines()) {
            all.append(' ').append(line.text().toLowerCase(Locale.ROOT));
            larder.find(line.ingredient()).ifPresent(listed::add);
            line.alternatives().forEach(other -> larder.find(other).ifPresent(listed::add));
        }
        List<Note> notes = new ArrayList<>();
        Set<Ingredient> told = new HashSet<>();
        for (Step step : recipe.steps()) {
            Wording text = larder.wording(step.text());
            for (Named named : names(text)) {
                if (isIn(all, named.words)) {
                    continue;
                }
                name(named.words, larder)
                        .filter(known -> !listed.contains(known) && !isEggOfList(known, all))
                        .filter(known -> !isCalledSo(recipe, named.words, larder))
                        .filter(known -> !named.alone || isFood(named.words, text, larder))
                        .filter(told::add)
                        .ifPresent(known -> notes.add(new Note(
                                Place.of(recipe.source(), step.line()),
                                "step %d adds %s, which is not on the list; put it there with its amount."
                                        .formatted(step.number(), known.name()))));
            }
        }
        return List.copyOf(notes);
    }

    /** The phrases that may be names, in the order in which they are told. */
    private static List<Named> names(Wording text) {
        List<Named> names = new ArrayList<>();
        ADDED.each(text, found -> names.add(new Named(found.group(1), false)));
        NAMED.each(text, found -> names.add(new Named(found.group(1), true)));
        return names;
    }

    /** Whether words that stand alone name something to eat as a whole: "and sprinkle with" names no sprinkles. */
    private static boolean isFood(String words, Wording step, Larder larder) {
        Wording wording = Wording.of(words);
        return larder.heardAs(words.toLowerCase(Locale.ROOT)).isPresent()
                && Techniques.standard().in(wording).techniques().isEmpty()
                && !(BLIND.standsIn(step) && WEIGHTS.standsIn(wording));
    }

    /** Yolks and whites come of eggs, whichever of them is listed. */
    private static boolean isEggOfList(Ingredient known, StringBuilder all) {
        return known.name().contains("egg") && EGG.matcher(all).find();
    }

    /** Whether a listed ingredient may be called so: "the coffee" of espresso powder. */
    private static boolean isCalledSo(Recipe recipe, String names, Larder larder) {
        String called = Nouns.singular(names.toLowerCase(Locale.ROOT));
        return recipe.lines().stream()
                .map(line -> larder.called(line.ingredient()))
                .anyMatch(each -> each.strong().contains(called) || each.weak().contains(called));
    }

    /** The longest name of the pantry that these words begin with. */
    private static Optional<Ingredient> name(String words, Larder larder) {
        if (MADE.standsIn(Wording.of(words))) {
            return Optional.empty();
        }
        String[] each = PIECES.split(words.toLowerCase(Locale.ROOT), -1);
        for (int end = each.length; end > 0; end--) {
            String name = String.join(" ", List.of(each).subList(0, end));
            if (ALWAYS_THERE.contains(name)) {
                return Optional.empty();
            }
            Optional<Ingredient> known = larder.heardAs(name);
            if (known.isPresent()) {
                return known;
            }
        }
        return Optional.empty();
    }

    /** Whether one of the words stands anywhere in the list: "the seeds" of what is listed as sesame seeds. */
    private static boolean isIn(StringBuilder all, String names) {
        for (String word : PIECES.split(names.toLowerCase(Locale.ROOT), -1)) {
            String stem = Nouns.singular(word);
            if (stem.length() > 2 && all.indexOf(stem) >= 0) {
                return true;
            }
        }
        return false;
    }
}
