package org.misecue.spoken;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

/**
 * Finds ingredients named in the stream: by the recipe's own words, by the pantry's names in other Englishes, and by
 * words that sound like the recipe's.
 */
public final class NameListener {

    private static final int LONGEST_NAME = 5;
    private static final int SHORTEST_JOINED = 7;

    /** Words of a name that mean nothing by themselves. */
    private static final Set<String> LEANING =
            Words.set("large medium small fresh fine ground dried whole plain white dark light soft strong warm cold "
                    + "full fat extra good quality raw ripe free range hot boiling low fast action instant pure thick "
                    + "double single heavy baking mixed powder powdered paste extract raising self brown active easy "
                    + "bake of and the a in with for packed neutral clear runny set halve half piece red green black "
                    + "golden fluid liquid purpose all sea table top seed leaf stick clove pod cooking natural unfed "
                    + "flaky roasted cracked");

    private final WordStream words;
    private final Pantry pantry;
    private final List<Set<String>> lineWords = new ArrayList<>();
    private final List<Optional<Ingredient>> lineIngredients = new ArrayList<>();
    private final Set<String> vocabulary = new HashSet<>();
    private final SoundAlikes soundAlikes;
    private final Map<String, Optional<Ingredient>> looked = new HashMap<>();

    public NameListener(WordStream words, Recipe recipe, Pantry pantry) {
        this.words = words;
        this.pantry = pantry;
        for (IngredientLine line : recipe.lines()) {
            Set<String> own = Words.content(line.ingredient());
            lineWords.add(own);
            lineIngredients.add(pantry.find(line.ingredient()));
            vocabulary.addAll(own);
        }
        this.soundAlikes = new SoundAlikes(vocabulary);
    }

    /** In the order of the stream; none overlap. */
    public List<NameHit> all() {
        List<NameHit> hits = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<NameHit> hit = at(at);
            hit.ifPresent(hits::add);
            at = hit.map(NameHit::end).orElse(at + 1);
        }
        return List.copyOf(hits);
    }

    private Optional<NameHit> at(int start) {
        Optional<NameHit> own = byRecipe(start);
        Optional<NameHit> known = byPantry(start);
        if (own.isPresent() && known.isPresent()) {
            return known.get().end() > own.get().end() ? known : own;
        }
        return own.isPresent() ? own : known;
    }

    /** The longest run of words that some line of the recipe has all of. */
    private Optional<NameHit> byRecipe(int start) {
        Set<Integer> lines = Set.of();
        boolean stands = false;
        int end = start;
        while (end - start < LONGEST_NAME) {
            Heard own = ownWord(end);
            Set<Integer> having = linesWith(own.word(), end == start ? null : lines);
            if (having.isEmpty()) {
                break;
            }
            lines = having;
            stands |= !LEANING.contains(own.word());
            end = own.end();
        }
        return end > start && (stands || (end - start > 1 && lines.size() == 1))
                ? Optional.of(new NameHit(start, end, lines, words.normal(start, end)))
                : Optional.empty();
    }

    private Set<Integer> linesWith(String word, @org.jspecify.annotations.Nullable Set<Integer> among) {
        Set<Integer> having = new LinkedHashSet<>();
        for (int line = 0; line < lineWords.size(); line++) {
            if (lineWords.get(line).contains(word) && (among == null || among.contains(line))) {
                having.add(line);
            }
        }
        return having;
    }

    /** A word of the recipe and where it ends; recognisers cut "buttermilk" and "demerara" in pieces. */
    private Heard ownWord(int start) {
        for (int pieces = 3; pieces > 1; pieces--) {
            String joined = Words.singular(words.normal(start, start + pieces).replace(" ", ""));
            if (start + pieces <= words.size() && joined.length() >= SHORTEST_JOINED) {
                boolean pieceOfIts = vocabulary.contains(Words.singular(words.text(start)));
                Optional<String> own = vocabulary.contains(joined)
                        ? Optional.of(joined)
                        : pieceOfIts ? Optional.empty() : soundAlikes.of(joined);
                if (own.isPresent()) {
                    return new Heard(own.get(), start + pieces);
                }
            }
        }
        String singular = Words.singular(words.text(start));
        boolean known = vocabulary.contains(singular) || singular.isEmpty();
        return new Heard(known ? singular : soundAlikes.of(singular).orElse(singular), start + 1);
    }

    private record Heard(String word, int end) {}

    /** The longest name that the pantry knows; it may be one of the recipe's ingredients in another English. */
    private Optional<NameHit> byPantry(int start) {
        for (int length = LONGEST_NAME; length >= 1; length--) {
            int end = start + length;
            if (!startsName(start, end) || (length == 1 && LEANING.contains(Words.singular(words.text(start))))) {
                continue;
            }
            Optional<Ingredient> known = known(start, end);
            if (known.isPresent()) {
                Set<Integer> lines = linesOf(known.get());
                return Optional.of(new NameHit(start, end, lines, words.normal(start, end)));
            }
        }
        return Optional.empty();
    }

    private Optional<Ingredient> known(int start, int end) {
        String name = words.normal(start, end);
        int space = name.indexOf(' ');
        Optional<Ingredient> known = looked.computeIfAbsent(name, pantry::heardAs);
        if (known.isPresent() || space < 0) {
            return known;
        }
        String joined = name.substring(0, space) + name.substring(space + 1);
        return looked.computeIfAbsent(joined, pantry::heardAs);
    }

    /** The pantry overlooks numbers in a name; here a number before or after it is somebody's amount. */
    private boolean startsName(int start, int end) {
        return end <= words.size()
                && Character.isLetter(words.text(start).charAt(0))
                && Character.isLetter(words.text(end - 1).charAt(0));
    }

    private Set<Integer> linesOf(Ingredient ingredient) {
        Set<Integer> lines = new LinkedHashSet<>();
        for (int line = 0; line < lineIngredients.size(); line++) {
            if (lineIngredients.get(line).filter(ingredient::equals).isPresent()) {
                lines.add(line);
            }
        }
        return lines;
    }
}
