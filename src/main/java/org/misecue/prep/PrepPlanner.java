package org.misecue.prep;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.pantry.Pantry;
import org.misecue.scale.ScaledRecipe;

/** Makes the mise en place of a recipe at one batch size: the way into this package. */
public final class PrepPlanner {

    private PrepPlanner() {}

    /**
     * The same recipe, pantry and settings always give the same plan. The bowls of an ingredient line add up to the line,
     * in every take.
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
        JobPlanner planner = new JobPlanner(scaled.recipe(), pantry, settings);
        List<Job> jobs = planner.plan(bowls, setter.toHand());
        return new PrepPlan(
                scaled.recipe().title(),
                scaled.factor(),
                settings.sets(),
                bowls,
                List.copyOf(setter.toHand()),
                jobs,
                KitList.of(scaled.recipe(), bowls, settings.sets().takes()),
                new ShoppingList(pantry, settings).of(scaled),
                new Cautions(scaled.recipe(), pantry).find(oneTake, setter.toHand()),
                Stream.of(scaled.warnings(), setter.notes(), planner.notes())
                        .flatMap(List::stream)
                        .toList(),
                Set.of());
    }
}
