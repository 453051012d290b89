package org.misecue.claims;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** What the nouns around a claim mean: the dish, a part of it, an ingredient, or another dish. */
final class Subjects {

    private static final Set<String> ANY_DISH = Words.set(
            "cake bake bread recipe treat dessert batch slice one ones pudding sponge mix thing lot dish tray baking");
    private static final Set<String> DISHES = Words.set(
            "loaf bun biscuit cookie brownie blondie traybake tart pie muffin cupcake flapjack scone roll pastry cracker "
                    + "square bar cheesecake crumble doughnut donut pancake waffle teacake ring pavlova trifle gateau roulade "
                    + "swiss crepe macaroon macaron shortbread gingerbread parkin custard jelly meringue focaccia pizza "
                    + "bagel pretzel strudel eclair profiterole tiffin fudge truffle ganache ice-cream banana-bread");

    private static final int LONGEST_DISH = 4;

    private final WordStream words;
    private final Recipe recipe;
    private final Pantry pantry;
    private final List<NameHit> hits;
    private final Set<String> title;

    Subjects(WordStream words, Recipe recipe, Pantry pantry) {
        this.words = words;
        this.recipe = recipe;
        this.pantry = pantry;
        this.hits = new NameListener(words, recipe, pantry).all();
        this.title = Words.content(recipe.title());
    }

    /** What the noun means that begins at the index, as in "dairy free butter"; empty for another dish or no noun. */
    record Meaning(Optional<Subject> subject, int end) {}

    /** The noun that begins at the index or one adjective later; empty where no noun is known there. */
    Optional<Meaning> at(int start) {
        int head = behindFoods(start);
        if (head > start && !words.wall(head) && isDish(head)) {
            return Optional.of(new Meaning(part(head).or(() -> dish(words.text(head))), head + 1));
        }
        Optional<Meaning> here = nounAt(start);
        return here.isPresent() || words.wall(start + 1)
                ? here
                : nounAt(start + 1).filter(noun -> start < words.size());
    }

    /** "mango semolina cake": foods in a row may name a dish. */
    private int behindFoods(int start) {
        int at = start;
        while (at < start + LONGEST_DISH && !words.wall(at) && isFood(at)) {
            at++;
        }
        return at;
    }

    private boolean isFood(int at) {
        return hits.stream().anyMatch(hit -> hit.start() <= at && at < hit.end());
    }

    private Optional<Meaning> nounAt(int start) {
        if (words.wall(start) && start > 0) {
            return Optional.empty();
        }
        int last = start;
        Optional<NameHit> hit = hits.stream()
                .filter(one -> one.start() <= start && one.end() > start)
                .findFirst();
        if (hit.isPresent()) {
            last = hit.get().end() - 1;
        }
        if (hit.isPresent() && isDish(last + 1) && !words.wall(last + 1)) {
            last++;
        }
        if (isDish(last) && hit.filter(NameHit::inRecipe).isEmpty()) {
            return Optional.of(new Meaning(part(last).or(() -> dish(words.text(last(start)))), last + 1));
        }
        Optional<Subject> part = part(last);
        if (part.isPresent()) {
            return Optional.of(new Meaning(part, last + 1));
        }
        if (hit.isEmpty()) {
            return Optional.empty();
        }
        if (last >= hit.get().end()) {
            return Optional.of(new Meaning(dish(words.text(last)), last + 1));
        }
        int end = last + 1;
        return Optional.of(new Meaning(Optional.of(ingredient(start, end)), end));
    }

    private int last(int start) {
        return hits.stream()
                .filter(one -> one.start() <= start && one.end() > start)
                .findFirst()
                .map(hit -> isDish(hit.end()) && !words.wall(hit.end()) ? hit.end() : hit.end() - 1)
                .orElse(start);
    }

    /** What the noun means that ends right before the index, as in "this margarine is vegan". */
    Optional<Meaning> before(int end) {
        if (end <= 0) {
            return Optional.empty();
        }
        Optional<NameHit> hit = hits.stream().filter(one -> one.end() == end).findFirst();
        if (hit.isPresent() && !(isDish(end - 1) && !hit.get().inRecipe())) {
            Optional<Subject> part = part(end - 1);
            return Optional.of(new Meaning(
                    part.isPresent() ? part : Optional.of(ingredient(hit.get().start(), end)), end));
        }
        Optional<Subject> part = part(end - 1);
        if (part.isPresent()) {
            return Optional.of(new Meaning(part, end));
        }
        return isDish(end - 1) ? Optional.of(new Meaning(dish(words.text(end - 1)), end)) : Optional.empty();
    }

    boolean isDish(int at) {
        String noun = Words.singular(words.text(at));
        return ANY_DISH.contains(noun) || DISHES.contains(noun) || (title.contains(noun) && isLastOfTitle(noun));
    }

    private boolean isLastOfTitle(String noun) {
        return title.stream().reduce((one, other) -> other).filter(noun::equals).isPresent();
    }

    /** This dish; empty for a sort that the title is not: a brownie is no loaf. */
    private Optional<Subject> dish(String word) {
        String noun = Words.singular(word);
        boolean other =
                DISHES.contains(noun) && !title.contains(noun) && title.stream().anyMatch(own -> DISHES.contains(own));
        return other ? Optional.empty() : Optional.of(Subject.DISH);
    }

    /** A part with its own ingredients, by the last word of its name. */
    Optional<Subject> part(int at) {
        if (recipe.components().size() < 2) {
            return Optional.empty();
        }
        String noun = Words.singular(words.text(at));
        return recipe.components().stream()
                .map(Component::name)
                .filter(name -> Words.content(name).stream()
                        .reduce((one, other) -> other)
                        .filter(noun::equals)
                        .isPresent())
                .findFirst()
                .map(name -> new Subject(Subject.Kind.PART, name));
    }

    /** By the recipe's own name where it has such a line. */
    private Subject ingredient(int start, int end) {
        String name = words.normal(start, end);
        return linesOf(name).stream()
                .findFirst()
                .map(line -> new Subject(Subject.Kind.INGREDIENT, line.ingredient()))
                .orElse(new Subject(Subject.Kind.INGREDIENT, name));
    }

    /** The lines that a name means: all its words, the same ingredient of the pantry, or its last word. */
    List<IngredientLine> linesOf(String name) {
        Set<String> content = new LinkedHashSet<>(Words.content(name));
        List<IngredientLine> lines = recipe.lines();
        List<IngredientLine> all = lines.stream()
                .filter(line ->
                        !content.isEmpty() && Words.content(line.ingredient()).containsAll(content))
                .toList();
        if (!all.isEmpty()) {
            return all;
        }
        Optional<Ingredient> known = pantry.heardAs(name).or(() -> pantry.find(name));
        List<IngredientLine> same = lines.stream()
                .filter(line ->
                        known.isPresent() && pantry.find(line.ingredient()).equals(known))
                .toList();
        if (!same.isEmpty()) {
            return same;
        }
        Optional<String> head = content.stream().reduce((one, other) -> other);
        return lines.stream()
                .filter(line -> head.isPresent()
                        && Words.content(line.ingredient()).stream()
                                .reduce((one, other) -> other)
                                .equals(head))
                .toList();
    }
}
