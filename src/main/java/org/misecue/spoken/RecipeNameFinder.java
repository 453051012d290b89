package org.misecue.spoken;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Pantry;

/** Names by the recipe's own words: the longest run of words that some line has all of. */
final class RecipeNameFinder {

    private static final int LONGEST_NAME = 5;
    /** What no longer name goes on with. */
    private static final Set<String> PLACES =
            Words.set("here there over and in into on for with so now that go goes together");

    private final WordStream words;
    private final RecipeNames recipe;
    private final HeardWords heard;
    private final LoneAdjectives adjectives;

    RecipeNameFinder(WordStream words, Pantry pantry, RecipeNames recipe) {
        this.words = words;
        this.recipe = recipe;
        this.heard = new HeardWords(words, pantry, recipe);
        this.adjectives = new LoneAdjectives(words, recipe);
    }

    /** Notes what was named last. */
    void named(NameHit name) {
        adjectives.named(name);
    }

    /** The name that begins at the index, if one does. */
    Optional<NameHit> at(int start) {
        Set<Integer> lines = Set.of();
        boolean stands = false;
        int end = start;
        while (end - start < LONGEST_NAME && (end == start || !words.wall(end))) {
            HeardWords.Heard word = heard.at(end);
            Set<Integer> having =
                    end == start ? recipe.beginningWith(word.word()) : both(recipe.with(word.word()), lines);
            if (having.isEmpty()) {
                break;
            }
            Set<Integer> counted = counted(end, having);
            lines = counted.isEmpty() ? having : counted;
            stands |= recipe.stands(word.word()) || !counted.isEmpty();
            end = word.end();
        }
        boolean named = end > start
                && (stands || (recipe.areOneThing(lines) && (end - start > 1 || adjectives.mean(start, lines))));
        return named ? Optional.of(name(start, end, lines)) : Optional.empty();
    }

    private static Set<Integer> both(Set<Integer> lines, Set<Integer> others) {
        Set<Integer> both = new LinkedHashSet<>(lines);
        both.retainAll(others);
        return both;
    }

    /** "six whites", "a dozen pods": in the plural the last word stands for what is counted. */
    private Set<Integer> counted(int at, Set<Integer> lines) {
        String thing = Words.singular(words.text(at));
        boolean one = words.text(at).equals(thing) && !words.text(at - 1).equals("one") && !isCountedOff(at);
        return one || !words.on(Mechanism.HEAD_NOUNS) ? Set.of() : recipe.counting(thing, lines);
    }

    /** "six yolk here and six white over there": many speakers leave the plural out. */
    private boolean isCountedOff(int at) {
        return NumberWords.isOne(words.text(at - 1)) && (words.wall(at + 1) || PLACES.contains(words.text(at + 1)));
    }

    private NameHit name(int start, int end, Set<Integer> lines) {
        boolean other =
                words.on(Mechanism.OTHER_FORMS) && !words.wall(end) && OtherForms.isOne(words.text(end), lines, recipe);
        return other
                ? new NameHit(start, end + 1, Set.of(), words.normal(start, end + 1))
                : new NameHit(start, end, lines, words.normal(start, end));
    }
}
