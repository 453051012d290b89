package org.misecue.spoken;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

/** The words by which the recipe's lines may be called, and the lines that a word may mean. */
final class RecipeNames {

    private static final int SHORTEST_ALIAS = 5;

    /** What people call a thing by its sort. */
    private static final Map<String, Set<String>> SORTS = Map.of(
            "cheese",
            Words.set("cheddar parmesan gruyere gruyère gouda feta halloumi mozzarella stilton emmental pecorino comté "
                    + "leicester manchego"),
            "nut",
            Words.set("hazelnut walnut pecan almond pistachio macadamia cashew peanut"));

    /**
     * One line of the recipe.
     *
     * @param words the telling words of its ingredient
     * @param counted what is counted where the line counts: the "pod" of vanilla pods; empty for one that is measured
     */
    private record Line(Set<String> words, String text, String counted, Optional<Ingredient> ingredient) {}

    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Set<Integer>> linesOfWord = new HashMap<>();
    private final Set<String> standing = new HashSet<>();
    private final Map<String, Set<Integer>> aliases = new HashMap<>();

    /** @param withAliases whether what the pantry calls the lines counts as well */
    RecipeNames(Recipe recipe, Pantry pantry, boolean withAliases) {
        for (IngredientLine line : recipe.lines()) {
            Set<String> own = Words.content(line.ingredient());
            lines.add(new Line(
                    own,
                    line.text().toLowerCase(Locale.ROOT),
                    isCounted(line) ? lastOf(own) : "",
                    pantry.find(line.ingredient())));
            int index = lines.size() - 1;
            own.forEach(word -> linesOfWord
                    .computeIfAbsent(word, k -> new LinkedHashSet<>())
                    .add(index));
            standing.addAll(standing(own));
            if (withAliases) {
                lines.get(index).ingredient().ifPresent(known -> addAliases(known, index));
            }
        }
        if (withAliases) {
            addSorts();
        }
    }

    /** "the cheese" is the cheddar, where the list has no other. */
    private void addSorts() {
        SORTS.forEach((sort, of) -> {
            Set<Integer> these = IntStream.range(0, lines.size())
                    .filter(line -> of.contains(lastOf(lines.get(line).words())))
                    .boxed()
                    .collect(Collectors.toSet());
            if (!these.isEmpty() && !linesOfWord.containsKey(sort)) {
                aliases.computeIfAbsent(sort, k -> new LinkedHashSet<>()).addAll(these);
            }
        });
    }

    private static boolean isCounted(IngredientLine line) {
        return line.quantity().filter(written -> written.unit() == Unit.EACH).isPresent();
    }

    private static String lastOf(Set<String> words) {
        return words.stream().reduce((first, second) -> second).orElse("");
    }

    /** Single words that the pantry has for a line ("bicarb", "ghee"): they may be misheard like the recipe's own. */
    private void addAliases(Ingredient known, int line) {
        Stream.concat(known.names().stream(), known.heard().stream())
                .map(name -> Words.singular(name.toLowerCase(Locale.ROOT)))
                .filter(name -> name.chars().allMatch(Character::isLetter) && name.length() >= SHORTEST_ALIAS)
                .filter(name -> !linesOfWord.containsKey(name) && !LeaningWords.has(name))
                .forEach(name -> aliases.computeIfAbsent(name, k -> new LinkedHashSet<>())
                        .add(line));
    }

    /** The words by which a line is known; where all lean on others ("ground cloves"), the last one. */
    private static Set<String> standing(Set<String> own) {
        Set<String> standing = new HashSet<>(own);
        standing.removeIf(LeaningWords::has);
        return standing.isEmpty() && !own.isEmpty() ? Set.of(lastOf(own)) : standing;
    }

    /** Every word of the lines' own. */
    Set<String> vocabulary() {
        return linesOfWord.keySet();
    }

    /** The lines' own words and the pantry's for them. */
    Set<String> all() {
        Set<String> all = new HashSet<>(linesOfWord.keySet());
        all.addAll(aliases.keySet());
        return all;
    }

    boolean has(String word) {
        return linesOfWord.containsKey(word) || aliases.containsKey(word);
    }

    /** Whether the word means something without another beside it. */
    boolean stands(String word) {
        return standing.contains(word) || aliases.containsKey(word);
    }

    /** The lines that a name which begins with the word may mean. */
    Set<Integer> beginningWith(String word) {
        return aliases.containsKey(word) ? aliases.getOrDefault(word, Set.of()) : with(word);
    }

    /** The lines that have the word for one of their own. */
    Set<Integer> with(String word) {
        return linesOfWord.getOrDefault(word, Set.of());
    }

    /** Those of the lines that count something of this name. */
    Set<Integer> counting(String thing, Set<Integer> among) {
        return among.stream()
                .filter(line -> lines.get(line).counted().equals(thing))
                .collect(Collectors.toSet());
    }

    /** The lines that the pantry knows as this ingredient. */
    Set<Integer> of(Ingredient ingredient) {
        Set<Integer> known = new LinkedHashSet<>();
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).ingredient().filter(ingredient::equals).isPresent()) {
                known.add(line);
            }
        }
        return known;
    }

    /** "cake flour", where that is how the list has it, whatever it is taken for. */
    Set<Integer> writing(String name) {
        return name.indexOf(' ') < 0
                ? Set.of()
                : IntStream.range(0, lines.size())
                        .filter(line -> lines.get(line).text().contains(" " + name))
                        .boxed()
                        .collect(Collectors.toSet());
    }

    /** One line, or the same ingredient in several parts. */
    boolean areOneThing(Set<Integer> these) {
        return these.stream().map(line -> lines.get(line).words()).distinct().count() == 1;
    }

    /** Whether a line of these has one of the words for its own. */
    boolean haveAny(Set<Integer> these, Set<String> words) {
        return these.stream().flatMap(line -> lines.get(line).words().stream()).anyMatch(words::contains);
    }

    /** Whether two lines are sorts of one thing, by a word that both stand on: "rye flour" and "white flour". */
    boolean areKin(int one, int other) {
        return lines.get(other).words().stream()
                .anyMatch(word ->
                        !LeaningWords.has(word) && lines.get(one).words().contains(word));
    }
}
