package org.misecue.offers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.narration.Narration;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.Places;
import org.misecue.spoken.QuantityListener;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** The foods and amounts of a stream, and which of the recipe's lines a food may stand for. */
final class Foods {

    private static final Set<String> ARTICLES =
            Words.set("a an the some any just your my our maybe about of same amount weight quantity half up all");
    private static final Set<String> SPOONFULS =
            Words.set("layer handful spoonful splash squeeze drop bit piece knob sprinkle scattering dollop little");
    private static final Set<String> ADJECTIVES = Words.set(
            "ordinary normal plain greek melted chopped fresh frozen dried tinned strong good nice soft cold warm hot thick "
                    + "natural neutral any whole ground toasted roasted light dark unsalted salted cheap runny clear set fine "
                    + "coarse grated sliced cooked ripe regular standard other shop bought proper organic vegan free gluten "
                    + "dairy sour sweet semi demi smooth crunchy little extra full fat low tin strained leftover mashed");
    private static final Set<String> NO_FOOD = Words.set(
            "it that this them those these you i we they he she one ones more less twice same rest lot bit spoon whisk mixer "
                    + "bowl pan pans skillet basin board film kettle rack grater sock freezer fridge fan heat water-bath recipe method link bowl tin tray oven hands hand fingers fork knife blender machine scale scales the a an and or but so "
                    + "for with in on at to of as is are was be if then than not no what which who whatever something "
                    + "anything nothing time minute minutes way paper foil cup jug sieve wrapper wooden metal spatula "
                    + "double half all both each every other another your my our very really just only instead");

    private static final int NEAR = 14;
    private static final int FAR = 60;
    private static final int LONGEST_UNKNOWN = 3;

    final WordStream words;
    final List<IngredientLine> lines;
    private final Recipe recipe;
    private final Pantry pantry;
    private final List<Optional<Ingredient>> ingredients;
    private final Places<NameHit> names;
    private final List<SpokenQuantity> amounts;
    private final Places<SpokenQuantity> amountPlaces;

    Foods(Recipe recipe, Narration narration, Pantry pantry) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.words = WordStream.of(List.of(narration));
        this.lines = recipe.lines();
        this.ingredients =
                lines.stream().map(line -> pantry.find(line.ingredient())).toList();
        List<NameHit> hits = new NameListener(words, recipe, pantry).all();
        this.names = Places.ofNames(hits);
        this.amounts = new QuantityListener(words, hits, Set.of()).allNumbers();
        this.amountPlaces = Places.ofQuantities(amounts);
    }

    static int count(String words) {
        return words.split(" ").length;
    }

    static boolean isAdjective(String word) {
        return ADJECTIVES.contains(word);
    }

    /** The food that begins at the index, behind articles and an amount; empty where no known food does. */
    Optional<Portion> at(int start) {
        int at = articles(start);
        Optional<SpokenQuantity> amount = amountPlaces.at(at);
        int name = amount.map(said -> articles(said.end())).orElse(at);
        return named(start, name, amount);
    }

    /** The same, or words that may name a food that nobody here knows. */
    Optional<Portion> anyAt(int start) {
        return at(start).or(() -> unknown(start));
    }

    private int articles(int start) {
        int at = start;
        if (words.text(at + 2).equals("of")
                && SPOONFULS.contains(words.text(at + 1))
                && amountPlaces.at(at).isEmpty()) {
            at += 3;
        }
        while (at < start + 6
                && ARTICLES.contains(words.text(at))
                && names.at(at).isEmpty()
                && amountPlaces.at(at).isEmpty()) {
            at++;
        }
        return at;
    }

    private Optional<Portion> named(int start, int name, Optional<SpokenQuantity> amount) {
        for (int at = name; at <= name + 2; at++) {
            if (at > name && (words.wall(at) || !ADJECTIVES.contains(words.text(at - 1)))) {
                break;
            }
            Optional<NameHit> hit = names.at(at);
            if (hit.isPresent()) {
                return Optional.of(new Portion(
                        start, hit.get().end(), amount, name, hit.get().lines(), true));
            }
        }
        return Optional.empty();
    }

    private Optional<Portion> unknown(int start) {
        int at = articles(start);
        Optional<SpokenQuantity> amount = amountPlaces.at(at);
        int name = amount.map(said -> articles(said.end())).orElse(at);
        int end = name;
        while (end < name + LONGEST_UNKNOWN
                && end < words.size()
                && (end == name || !words.wall(end))
                && !words.text(end).isEmpty()
                && Character.isLetter(words.text(end).charAt(0))
                && !NO_FOOD.contains(words.text(end))
                && !Verdicts.isVerb(words.text(end))
                && amountPlaces.at(end).isEmpty()) {
            end++;
        }
        return end > name ? Optional.of(new Portion(start, end, amount, name, Set.of(), false)) : Optional.empty();
    }

    /** The food whose name ends right before the index, with adjectives and an amount before it. */
    Optional<Portion> before(int end) {
        Optional<NameHit> hit = names.before(end).filter(one -> one.end() == end);
        if (hit.isEmpty()) {
            return Optional.empty();
        }
        int name = hit.get().start();
        while (name > 0 && !words.wall(name) && ADJECTIVES.contains(words.text(name - 1))) {
            name--;
        }
        int at = name;
        while (at > 0 && !words.wall(at) && words.text(at - 1).matches("of|the|a|some")) {
            at--;
        }
        int until = at;
        int first = name;
        Optional<SpokenQuantity> amount = amounts.stream()
                .filter(said -> said.end() == until || said.end() == first)
                .findFirst();
        int start = amount.map(SpokenQuantity::start).orElse(at);
        return Optional.of(new Portion(start, end, amount, name, hit.get().lines(), true));
    }

    /** The last amount that begins in {@code [from, to)}. */
    Optional<SpokenQuantity> amountIn(int from, int to) {
        List<SpokenQuantity> found = amountPlaces.in(from, to);
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
    }

    /** The recipe's ingredient of which the words right at the index are the name: "the buttermilk". */
    Optional<Portion> ownAt(int start) {
        return at(start).filter(Portion::inRecipe);
    }

    /** One of the recipe's lines, named or pointed at in words that end there. */
    record Own(int line, int end) {}

    /** "the buttermilk", or "it" for what was spoken of last before the index. */
    Optional<Own> ownOrPointed(int at, int before) {
        Optional<Own> named = ownAt(at).map(own -> new Own(lineOf(own), own.end()));
        boolean pointed = words.text(at).matches("it|them|that|those|this|these|one");
        return named.isPresent() || !pointed
                ? named
                : recent(before, NEAR).stream().findFirst().map(line -> new Own(line, at + 1));
    }

    /** The line that a food which takes something's place may mean, by what was spoken of last and by its kind. */
    Optional<Integer> kin(Portion use, int before, boolean told) {
        List<Integer> recent = recent(before, NEAR);
        Optional<Integer> alike =
                recent.stream().filter(line -> isAlike(use, line)).findFirst();
        if (alike.isPresent()) {
            return alike;
        }
        Optional<Integer> near =
                recent.stream().filter(line -> told || isOfItsShelf(use, line)).findFirst();
        if (near.isPresent()) {
            return near;
        }
        return recent(before, FAR).stream()
                .filter(line -> isAlike(use, line))
                .findFirst()
                .or(() -> only(IntStream.range(0, lines.size())
                        .filter(line -> isAlike(use, line))
                        .boxed()
                        .toList()))
                .or(() -> only(IntStream.range(0, lines.size())
                        .filter(line -> isOfItsShelf(use, line) && isInTitle(line))
                        .boxed()
                        .toList()));
    }

    private static Optional<Integer> only(List<Integer> lines) {
        return lines.size() == 1 ? Optional.of(lines.get(0)) : Optional.empty();
    }

    private boolean isInTitle(int line) {
        Set<String> title = Words.content(recipe.title());
        return Words.content(lines.get(line).ingredient()).stream().anyMatch(title::contains);
    }

    /** Lines named before the index, the last one first. */
    private List<Integer> recent(int before, int reach) {
        List<NameHit> hits = new ArrayList<>(names.in(Math.max(0, before - reach), before));
        java.util.Collections.reverse(hits);
        return hits.stream()
                .flatMap(hit -> hit.lines().stream().sorted(Comparator.naturalOrder()))
                .distinct()
                .toList();
    }

    /** Both are milks, or sugars: the last word of their names is the same. */
    private boolean isAlike(Portion use, int line) {
        Optional<String> head = last(nameOf(use));
        return head.isPresent()
                && !use.lines().contains(line)
                && head.equals(last(lines.get(line).ingredient()));
    }

    private boolean isOfItsShelf(Portion use, int line) {
        Optional<Ingredient> one = ingredientOf(use);
        Optional<Ingredient> other = ingredients.get(line);
        if (one.isEmpty() || other.isEmpty() || one.equals(other)) {
            return false;
        }
        boolean sameKind = one.get().kind().equals(other.get().kind())
                && !one.get().kind().matches("other|powder|grain|chopped|liquid|syrup");
        return sameKind || one.get().aisle().equals(other.get().aisle());
    }

    private static Optional<String> last(String name) {
        return Words.content(name).stream().reduce((one, other) -> other);
    }

    Optional<Ingredient> ingredientOf(Portion food) {
        if (food.inRecipe()) {
            return ingredients.get(food.lines().iterator().next());
        }
        String heard = words.normal(food.nameStart(), food.end());
        return pantry.heardAs(heard).or(() -> food.known() ? pantry.find(hitName(food)) : pantry.find(heard));
    }

    /** "granulated" for a line of caster sugar is granulated sugar. */
    Optional<Ingredient> ingredientFor(Portion food, int line) {
        Optional<Ingredient> own = ingredientOf(food);
        return own.isPresent()
                ? own
                : sorts(food, line).stream()
                        .flatMap(sort -> pantry.heardAs(sort).stream())
                        .findFirst();
    }

    /** "dark" for light muscovado sugar is dark muscovado sugar, or dark sugar. */
    private List<String> sorts(Portion food, int line) {
        String heard = words.normal(food.nameStart(), food.end());
        String own = lines.get(line).ingredient();
        String plain = java.util.Arrays.stream(own.split(" "))
                .filter(word -> !ADJECTIVES.contains(word))
                .collect(java.util.stream.Collectors.joining(" "));
        return Stream.of(plain, last(own).orElse(plain))
                .map(noun -> heard + " " + noun)
                .distinct()
                .toList();
    }

    /** A sort of what is written, such as "semi skimmed" for whole milk. */
    boolean isSort(Portion food, int line) {
        return !food.known()
                && sorts(food, line).stream()
                        .anyMatch(sort -> pantry.heardAs(sort).isPresent());
    }

    /** What may be taken, as viewers should read it. */
    String nameFor(Portion food, int line) {
        if (ingredientOf(food).isPresent()) {
            return nameOf(food);
        }
        List<String> sorts = sorts(food, line);
        Optional<String> known =
                sorts.stream().filter(sort -> pantry.heardAs(sort).isPresent()).findFirst();
        boolean adjective = food.end() == food.nameStart() + 1 && ADJECTIVES.contains(words.text(food.nameStart()));
        return known.orElseGet(() -> adjective ? sorts.get(0) : nameOf(food));
    }

    private String hitName(Portion food) {
        return names.before(food.end())
                .filter(hit -> hit.end() == food.end())
                .map(NameHit::name)
                .orElse(words.normal(food.nameStart(), food.end()));
    }

    /** As heard where the words end like a name that is written so ("greek yoghurt"), otherwise the pantry's name. */
    String nameOf(Portion food) {
        String heard = words.normal(food.nameStart(), food.end());
        Optional<Ingredient> known = ingredientOf(food);
        if (known.isEmpty()) {
            return heard;
        }
        String last = words.text(food.end() - 1);
        boolean ownWord = last(known.get().name()).equals(Optional.of(Words.singular(last)))
                || (food.end() - food.nameStart() > 1 && pantry.find(last).equals(known));
        return ownWord ? heard : withAdjectives(food, known.get().name());
    }

    private String withAdjectives(Portion food, String name) {
        int hit = names.before(food.end()).map(NameHit::start).orElse(food.nameStart());
        String before = words.normal(food.nameStart(), hit);
        return before.isEmpty() ? name : before + " " + name;
    }

    /** The best of several lines: one that has an amount. */
    int lineOf(Portion own) {
        return own.lines().stream()
                .sorted()
                .filter(line -> lines.get(line).quantity().isPresent())
                .findFirst()
                .orElse(own.lines().iterator().next());
    }
}
