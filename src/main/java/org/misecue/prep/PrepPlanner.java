package org.misecue.prep;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.scale.ScaledRecipe;

/** Makes the mise en place of a recipe at one batch size: the way into this package. */
public final class PrepPlanner {

    private PrepPlanner() {}

    /**
     * The same recipe, pantry and settings always give the same plan. The bowls of an ingredient line add up to the line,
     * in every take.
     *
     * @throws BadInput if the settings name a step that the method does not have
     */
    public static PrepPlan plan(ScaledRecipe scaled, Pantry pantry, PrepSettings settings) {
        BowlSetter setter = new BowlSetter(scaled, pantry, settings);
        List<Bowl> oneTake = setter.set();
        List<Bowl> bowls = IntStream.rangeClosed(2, settings.sets().all())
                .boxed()
                .reduce(
                        oneTake,
                        (sets, take) -> Stream.concat(sets.stream(), BowlSetter.again(oneTake, take))
                                .toList(),
                        (one, other) -> other);
        Recipe recipe = scaled.recipe();
        MadeEarlier.known(recipe, settings.madeEarlier(), "made-earlier");
        FilmingClock clock = new FilmingClock(
                recipe.steps(),
                settings.sets().takes(),
                settings.firstShot(),
                MadeEarlier.steps(recipe, settings.madeEarlier()));
        SwapOutPlanner earlier = new SwapOutPlanner(recipe, oneTake, clock);
        List<SwapOut> swapOuts = earlier.wanted(settings.madeEarlier());
        List<Spare> spares = new SpareFinder(recipe, pantry, new Weights(pantry, settings.household()), oneTake)
                .find(settings.failures(), settings.hero());
        List<Bowl> filled = Stream.concat(
                        bowls.stream(), swapOuts.stream().flatMap(swapOut -> swapOut.bowls().stream()))
                .toList();
        JobPlanner planner = new JobPlanner(recipe, pantry, settings, clock);
        List<Job> jobs = planner.plan(filled, setter.toHand(), earlier.jobs(settings.madeEarlier()));
        return new PrepPlan(
                scaled.recipe().title(),
                scaled.factor(),
                settings.sets(),
                bowls,
                spares,
                swapOuts,
                earlier.worthwhile(settings.madeEarlier()),
                Tally.of(oneTake, settings.sets().all(), spares, swapOuts),
                List.copyOf(setter.toHand()),
                jobs,
                KitList.of(recipe, filled, settings.sets().takes()),
                new ShoppingList(pantry, settings).of(scaled, extras(spares, swapOuts)),
                new Cautions(scaled.recipe(), pantry).find(oneTake, setter.toHand()),
                Stream.of(scaled.warnings(), setter.notes(), planner.notes())
                        .flatMap(List::stream)
                        .toList(),
                Set.of());
    }

    /** What is bought once more, besides the sets of bowls. */
    private static List<Content> extras(List<Spare> spares, List<SwapOut> swapOuts) {
        return Stream.concat(
                        spares.stream().map(Spare::content),
                        swapOuts.stream()
                                .flatMap(swapOut -> swapOut.bowls().stream())
                                .flatMap(bowl -> bowl.contents().stream()))
                .toList();
    }
}
