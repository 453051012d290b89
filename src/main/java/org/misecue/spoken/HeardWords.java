package org.misecue.spoken;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Pantry;

/**
 * The recipe's word that a word of the stream is: said so, cut in pieces ("butter milk"), known by its sound ("flower") or
 * by its second half ("crumbs").
 */
final class HeardWords {

    private static final int SHORTEST_JOINED = 7;
    private static final int SHORTEST_HALF = 5;

    /** Pieces that begin the next thought more often than they end a word. */
    private static final Set<String> SMALL_PIECES =
            Words.set("a an the of and in is so you we i to no not but or if on at it that this then for with my");

    /** Nor does a word of the recipe begin with these: "go round" is not ground. */
    private static final Set<String> COMMON_FIRST = Words.set("go goes going come get got put give take");

    private static final Set<String> IN_THE_MAKING =
            Words.set("dough batter paste mixture bread cakes board stick berry");

    /** A word, as the recipe has it, and where it ends. */
    record Heard(String word, int end) {}

    private final WordStream words;
    private final Pantry pantry;
    private final RecipeNames recipe;
    private final SoundAlikes soundAlikes;

    HeardWords(WordStream words, Pantry pantry, RecipeNames recipe) {
        this.words = words;
        this.pantry = pantry;
        this.recipe = recipe;
        this.soundAlikes = new SoundAlikes(words.on(Mechanism.SOUND_ALIKES) ? recipe.all() : Set.of());
    }

    /** The word that begins at the index, in the singular. */
    Heard at(int start) {
        String singular = Words.singular(words.text(start));
        boolean known = recipe.has(singular) || singular.isEmpty();
        Optional<Heard> joined = words.on(Mechanism.CUT_NAMES) ? joined(start, known) : Optional.empty();
        if (joined.isPresent() || known) {
            return joined.orElse(new Heard(singular, start + 1));
        }
        return soundAlikes
                .of(singular)
                .or(() -> isMeasuredOut(start) ? soundAlikes.loosely(singular) : Optional.empty())
                .or(() -> words.on(Mechanism.HALF_NAMES) ? compoundOf(singular) : Optional.empty())
                .map(own -> new Heard(own, start + 1))
                .orElse(new Heard(singular, start + 1));
    }

    /** "a cup of card": what stands there is measured, so it is food, and no food has this name. */
    private boolean isMeasuredOut(int start) {
        return words.text(start - 1).equals("of")
                && UnitWords.at(words, start - 2).isPresent()
                && !words.wall(start)
                && pantry.heardAs(words.text(start)).isEmpty();
    }

    /** Two or three pieces that together are, or sound like, one of the recipe's words. */
    private Optional<Heard> joined(int start, boolean firstIsKnown) {
        for (int pieces = 3; pieces > 1; pieces--) {
            String whole = whole(start, pieces);
            if (recipe.vocabulary().contains(whole)) {
                return Optional.of(new Heard(whole, start + pieces));
            }
        }
        return firstIsKnown
                ? almost(whole(start, 2)).map(own -> new Heard(own, start + 2))
                : joinedBySound(start, 2).or(() -> joinedBySound(start, 3));
    }

    private Optional<Heard> joinedBySound(int start, int pieces) {
        String whole = whole(start, pieces);
        if (COMMON_FIRST.contains(words.text(start))) {
            return Optional.empty();
        }
        boolean small = SMALL_PIECES.contains(words.text(start + pieces - 1));
        Optional<String> own = whole.length() >= SHORTEST_JOINED && !small
                ? soundAlikes.of(whole).or(() -> soundAlikes.pieced(whole))
                : soundAlikes.nearly(whole);
        return own.map(word -> new Heard(word, start + pieces));
    }

    /** "brown in" for browning: a long word that only lacks its last letter. */
    private Optional<String> almost(String whole) {
        return recipe.vocabulary().stream()
                .filter(word -> whole.length() >= SHORTEST_JOINED
                        && word.length() == whole.length() + 1
                        && word.startsWith(whole))
                .findFirst();
    }

    /** The pieces as one word; empty where a sentence ends or a number stands between them. */
    private String whole(int start, int pieces) {
        boolean inside = start + pieces <= words.size() && words.wallWithin(start, start + pieces) == start + pieces;
        if (!inside) {
            return "";
        }
        String joined = words.normal(start, start + pieces).replace(" ", "");
        return joined.chars().allMatch(Character::isLetter) ? Words.singular(joined) : "";
    }

    /** "crumbs" for breadcrumbs: the second half of a compound, unless it is a food of its own, as the flour of cornflour is. */
    private Optional<String> compoundOf(String heard) {
        if (heard.length() < SHORTEST_HALF) {
            return Optional.empty();
        }
        return recipe.vocabulary().stream()
                .filter(word -> word.length() > heard.length() + 2 && word.endsWith(heard))
                .filter(word -> pantry.heardAs(heard).isEmpty() && !IN_THE_MAKING.contains(heard))
                .min(Comparator.naturalOrder());
    }
}
