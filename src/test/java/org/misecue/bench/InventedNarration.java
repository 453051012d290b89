package org.misecue.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

/**
 * Twenty minutes of talk about a recipe's ingredients, made of sentences of our own: always the same for the same seed,
 * and true of nothing, so good for measuring time only.
 */
final class InventedNarration {

    /** Twenty minutes at two and a half words a second, a usual pace of speech on camera; from memory, no source. */
    static final int WORDS = 3000;

    private static final Duration PER_WORD = Duration.ofMillis(400);
    private static final int WORDS_PER_CUE = 12;
    private static final long SEED = 20260101;

    /** "N" stands for an amount with its unit, "I" for an ingredient. About one sentence in three has an amount. */
    private static final List<String> SENTENCES = List.of(
            "now I and you want N of that",
            "in goes N of I straight into the bowl",
            "the I is about N no sorry N",
            "and the same again of I",
            "i said N of I earlier but it is N",
            "then another N of I goes in with it",
            "my sister puts N of I in hers but she would",
            "right so that is coming together nicely give it a good scrape round the sides",
            "i always think I is what makes this one what it is",
            "you can hear the rain on the roof of the shed today can't you",
            "keep the I to one side we will come back to it in a bit",
            "just have a look at the colour of that it wants to be paler still",
            "if the I looks a bit thick do not worry it loosens up as you go",
            "somebody asked me whether you can leave out the I and yes of course you can",
            "i have had this tin for thirty years and it has never once stuck",
            "so while that is in the oven let us get on with the washing up",
            "and gently does it you do not want to knock all the air out",
            "that smells lovely already and it has only been five minutes",
            "tip the I on top and fold it through with a big metal spoon");

    private static final List<String> AMOUNTS = List.of(
            "two hundred and fifty grams",
            "a hundred and twenty",
            "two teaspoons",
            "half a teaspoon",
            "four",
            "sixty mils",
            "a tablespoon",
            "three quarters of a cup",
            "eighty grams",
            "one fifty",
            "225g",
            "six hundred grams");

    private InventedNarration() {}

    /** The same talk so many times over, on one clock. */
    static Narration of(Recipe recipe, int times) {
        List<String> once = words(recipe);
        List<Cue> cues = new ArrayList<>();
        Duration at = Duration.ZERO;
        for (int time = 0; time < times; time++) {
            for (int from = 0; from < once.size(); from += WORDS_PER_CUE) {
                List<String> texts = once.subList(from, Math.min(once.size(), from + WORDS_PER_CUE));
                cues.add(cue(texts, at));
                at = at.plus(PER_WORD.multipliedBy(texts.size()));
            }
        }
        return new Narration("narration/main.txt", List.copyOf(cues), List.of());
    }

    private static Cue cue(List<String> texts, Duration start) {
        List<Word> words = new ArrayList<>();
        for (String text : texts) {
            words.add(new Word(text, start.plus(PER_WORD.multipliedBy(words.size()))));
        }
        Duration end = start.plus(PER_WORD.multipliedBy(texts.size()));
        return new Cue(start, end, Optional.empty(), String.join(" ", texts), List.copyOf(words));
    }

    private static List<String> words(Recipe recipe) {
        Random random = new Random(SEED);
        List<String> names =
                recipe.lines().stream().map(IngredientLine::ingredient).toList();
        List<String> words = new ArrayList<>();
        while (words.size() < WORDS) {
            for (String word : any(SENTENCES, random).split(" ")) {
                String said = word.equals("N") ? any(AMOUNTS, random) : word.equals("I") ? any(names, random) : word;
                words.addAll(List.of(said.split(" ")));
            }
        }
        return List.copyOf(words.subList(0, WORDS));
    }

    private static String any(List<String> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }
}
