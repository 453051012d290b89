package org.misecue.day;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import org.misecue.pantry.Pantry;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.PrepPlanner;
import org.misecue.prep.PrepSettings;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.Scaler;
import org.misecue.shots.ShotPlan;
import org.misecue.shots.ShotPlanner;
import org.misecue.shots.ShotTemplates;

/** Invented dishes and their filming days, with one take of each shot. */
public final class Days {

    public static final LocalDateTime TEN = LocalDateTime.of(2026, 5, 4, 10, 0);

    /** One oven, two bakes of different heat, a cake that cools and is glazed. */
    static final String TWO_HEATS = """
            # Toasted oat loaf

            Makes 10 slices

            ## Ingredients

            ### For the oats

            - 100 g rolled oats
            - 20 g honey

            ### For the loaf

            - 200 g plain flour
            - 2 tsp baking powder
            - 150 g caster sugar
            - 150 g butter, softened
            - 3 eggs

            ### For the glaze

            - 100 g icing sugar
            - 2 tbsp lemon juice

            ## Method

            1. Mix the oats with the honey, spread on a tray and bake at 160 °C for 20 minutes.
            2. Beat the butter with the sugar until pale, then beat in the eggs.
            3. Fold in the flour and the baking powder, fill into a loaf tin and bake at 180 °C for 45 minutes.
            4. Leave the loaf to cool in the tin for 20 minutes, then turn out and cool for 1 hour.
            5. Whisk the icing sugar with the lemon juice.
            6. Pour the glaze over the cold loaf and scatter with the toasted oats.
            """;

    private Days() {}

    public static Recipe recipe(String markdown) {
        try {
            Path file = Files.createTempFile("recipe", ".md");
            try {
                return RecipeReader.read(Files.writeString(file, markdown), "recipe.md", Pantry.standard());
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static DayPlanner planner(Recipe recipe, DaySettings settings) {
        PrepPlan prep = prep(recipe);
        return new DayPlanner(recipe, prep, shots(recipe, prep), settings, words -> {});
    }

    static DayPlan plan(String markdown, DaySettings settings) {
        return planner(recipe(markdown), settings).plan();
    }

    private static ScaledRecipe scaled(Recipe recipe) {
        return Scaler.scale(recipe, Batch.WRITTEN, ScaleRules.standard(), Pantry.standard());
    }

    private static PrepPlan prep(Recipe recipe) {
        return PrepPlanner.plan(
                scaled(recipe), Pantry.standard(), PrepSettings.standard().withFirstShot(TEN));
    }

    private static ShotPlan shots(Recipe recipe, PrepPlan prep) {
        return ShotPlanner.plan(scaled(recipe), prep, ShotTemplates.standard());
    }

    /** The row whose words contain some. */
    static Entry row(DayPlan plan, String words) {
        return find(plan, words).orElseThrow(() -> new AssertionError("no row says " + words + ": " + plan.entries()));
    }

    static Optional<Entry> find(DayPlan plan, String words) {
        return plan.entries().stream()
                .filter(entry -> entry.what().contains(words))
                .findFirst();
    }
}
