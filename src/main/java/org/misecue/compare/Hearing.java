package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.misecue.align.Aligner;
import org.misecue.align.Alignment;
import org.misecue.narration.Narration;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.MeasureSystem;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.Places;
import org.misecue.spoken.QuantityListener;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** All that was heard of one episode, side by side with its recipe: what the rules of this package look at. */
final class Hearing {

    final Recipe recipe;
    final WordStream words;
    final Phrases phrases;
    final List<SpokenQuantity> quantities;
    final List<NameHit> names;
    final Alignment alignment;
    final List<IngredientLine> lines;
    final List<Integer> componentOfLine = new ArrayList<>();
    final List<Optional<Ingredient>> ingredientOfLine = new ArrayList<>();
    final Household household;
    private static final Set<String> THEM = Set.of("them", "those", "these");
    private static final int PACK_REACH = 60;

    final Locators locators;
    final Trail trail = new Trail();
    final NameFirst nameFirst = new NameFirst(this);
    /** Where amounts are said by pointing at what was told for the viewers' batch. */
    final Set<Integer> pointedAtViewers = new HashSet<>();

    private final Medium medium;
    private final Places<NameHit> namePlaces;
    private final byte[] passing;
    private final Places<SpokenQuantity> quantityPlaces;
    private final int[] stepOfWord;
    private final int firstOfSteps;
    private final List<Set<Integer>> linesOfStep = new ArrayList<>();

    /** @param spoons whose cups and spoons are meant; where that is empty, what the recipe and the speaker tell decides */
    Hearing(
            Recipe recipe,
            List<Narration> narrations,
            Pantry pantry,
            Set<Mechanism> mechanisms,
            Medium medium,
            Optional<Household> spoons) {
        this.medium = medium;
        this.recipe = recipe;
        this.words = WordStream.of(narrations, mechanisms);
        this.phrases = new Phrases(words);
        List<NameHit> found = new NameListener(words, recipe, pantry)
                .all().stream()
                        .filter(name -> name.inRecipe() || !isComponent(recipe, name))
                        .toList();
        this.names = Narrowing.of(found, words, phrases, recipe.lines());
        this.namePlaces = Places.ofNames(names);
        this.passing = new byte[words.size()];
        this.quantities = new QuantityListener(words, names, counted(recipe)).all();
        this.quantityPlaces = Places.ofQuantities(quantities);
        this.alignment = Aligner.align(recipe, words, names, List.of());
        this.stepOfWord = stepsOf(alignment, words, medium);
        this.firstOfSteps = IntStream.range(0, stepOfWord.length)
                .filter(at -> stepOfWord[at] > 0)
                .findFirst()
                .orElse(0);
        this.lines = recipe.lines();
        for (int c = 0; c < recipe.components().size(); c++) {
            for (IngredientLine line : recipe.components().get(c).lines()) {
                componentOfLine.add(c);
                ingredientOfLine.add(pantry.find(line.ingredient()));
            }
        }
        this.household = spoons.orElseGet(() -> new WhoseSpoons(recipe, words, phrases).household());
        recipe.steps()
                .forEach(step -> linesOfStep.add(
                        new HashSet<>(step.uses().stream().map(recipe::indexOf).toList())));
        this.locators = new Locators(this);
    }

    private static Set<Integer> counted(Recipe recipe) {
        List<IngredientLine> lines = recipe.lines();
        return IntStream.range(0, lines.size())
                .filter(line -> lines.get(line)
                        .quantity()
                        .filter(written -> written.unit() == Unit.EACH)
                        .isPresent())
                .boxed()
                .collect(Collectors.toSet());
    }

    /** The step that is on at each word, 0 where none is; spans and words are both in the order of the stream. */
    private static int[] stepsOf(Alignment alignment, WordStream words, Medium medium) {
        int[] steps = new int[words.size()];
        int span = 0;
        for (int at = 0; at < words.size() && words.on(Mechanism.STEPS); at++) {
            while (span < alignment.spans().size()
                    && !alignment.spans().get(span).holds(words.at(at))) {
                span++;
            }
            int byWords = span < alignment.spans().size()
                    ? alignment.spans().get(span).step()
                    : 0;
            steps[at] = medium.stepAt(words.at(at)).orElse(byWords);
        }
        return steps;
    }

    /** A line without an amount can't be what one is waited for. */
    boolean takesAmounts(NameHit name) {
        return name.lines().stream().anyMatch(line -> lines.get(line).quantity().isPresent());
    }

    /** Whether the name belongs to an amount of another time or another kitchen: "forty eggs at a time in the bakery". */
    boolean toldElsewhere(NameHit name) {
        return quantityBefore(name.start())
                .filter(said -> name.start() - said.end() <= 1)
                .flatMap(SpokenQuantity::aside)
                .map(Aside::kind)
                .filter(kind -> kind == Aside.Kind.OTHER_PEOPLE
                        || kind == Aside.Kind.OTHER_TIME
                        || kind == Aside.Kind.ALTERNATIVE)
                .isPresent();
    }

    /** "the syrup": what the recipe calls a part of itself is no ingredient from elsewhere. */
    private static boolean isComponent(Recipe recipe, NameHit name) {
        Set<String> words = Words.content(name.name());
        return recipe.components().stream()
                .anyMatch(component -> Words.content(component.name()).containsAll(words));
    }

    /** The line as people tell it from others: its ingredient, and its component where there are several. */
    String lineName(int line) {
        String component = recipe.components().get(componentOfLine.get(line)).name();
        return lines.get(line).ingredient() + (component.isEmpty() ? "" : " (" + component + ")");
    }

    /** The name for the same ingredient in every part, though it may have been narrowed to one of them. */
    NameHit alike(NameHit name) {
        Set<String> ingredients =
                name.lines().stream().map(line -> lines.get(line).ingredient()).collect(Collectors.toSet());
        Set<Integer> alike = IntStream.range(0, lines.size())
                .filter(line -> name.lines().contains(line)
                        || ingredients.contains(lines.get(line).ingredient()))
                .boxed()
                .collect(Collectors.toSet());
        return name.meaning(alike);
    }

    boolean on(Mechanism mechanism) {
        return words.on(mechanism);
    }

    int stepAt(int index) {
        return stepOfWord[Math.max(0, Math.min(index, words.size() - 1))];
    }

    /** Whether what is made has not begun yet; false where nobody knows when it does. */
    boolean isBeforeAllSteps(int index) {
        return index < firstOfSteps;
    }

    boolean stepUses(int step, int line) {
        return step > 0 && linesOfStep.get(step - 1).contains(line);
    }

    /** Whether the step that is on uses anything of the component. */
    boolean stepIn(int step, int component) {
        return step > 0 && linesOfStep.get(step - 1).stream().anyMatch(line -> componentOfLine.get(line) == component);
    }

    /** The names that begin in {@code [from, to)}, in order. */
    List<NameHit> namesIn(int from, int to) {
        return namePlaces.in(from, to);
    }

    /** Whether the name is only said in passing; asked often, so it is kept. */
    boolean isPassing(NameHit name) {
        int at = name.start();
        if (passing[at] == 0) {
            passing[at] = (byte) (Passing.decide(name, this) ? 1 : -1);
        }
        return passing[at] > 0;
    }

    /** The first amount that begins at the index or later. */
    Optional<SpokenQuantity> quantityFrom(int from) {
        return quantityPlaces.from(from);
    }

    /** The amounts that begin in {@code [from, to)}, in order. */
    List<SpokenQuantity> quantitiesIn(int from, int to) {
        return quantityPlaces.in(from, to);
    }

    /** The last amount that begins before the index, if it has ended by then. */
    Optional<SpokenQuantity> quantityBefore(int until) {
        return quantityPlaces.before(until).filter(said -> said.end() <= until);
    }

    /** The size of the pack that was spoken of last. */
    Optional<SpokenQuantity> packBefore(int until) {
        return quantitiesIn(until - PACK_REACH, until).stream()
                .filter(said -> said.isAside(Aside.Kind.PACK_SIZE) && said.end() <= until)
                .reduce((first, second) -> second);
    }

    /** Whether an amount and a name that begin there can belong together. */
    boolean together(int one, int other) {
        return medium.together(words.at(one), words.at(other));
    }

    /** Whether an amount that ends there is one of what was named before: "six of them". */
    boolean isOfThem(int end) {
        return words.text(end).equals("of") && THEM.contains(words.text(end + 1));
    }

    /** How a reason begins: "Said". */
    String told() {
        return medium.told();
    }

    boolean sameSource(int one, int other) {
        return words.at(one).source().equals(words.at(other).source());
    }

    Evidence evidence(int start, int end, Optional<Quantity> quantity) {
        return medium.evidence(words, start, end, quantity);
    }

    /** Whether two units belong to one family of measures, spoons belonging to all. */
    static boolean sameSystem(Unit one, Unit other) {
        return one.system() == other.system()
                ? one.system() != MeasureSystem.HOUSEHOLD || one == other || one.dimension() == other.dimension()
                : (one.system() == MeasureSystem.SHARED || other.system() == MeasureSystem.SHARED)
                        && one.system() != MeasureSystem.HOUSEHOLD
                        && other.system() != MeasureSystem.HOUSEHOLD;
    }
}
