package org.misecue.publish;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.recipe.RecipeReader;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.Scaler;

/** Editions for the tests: of a recipe with everything known, and of every recipe among the test resources. */
final class TestEditions {

    private static final ScaleRules RULES =
            new ScaleRules(Quantity.of(1, Unit.GRAM), Household.US_LABEL, 1, Optional.empty());

    private TestEditions() {}

    static WebData everywhere() {
        return new WebData(
                Locale.UK,
                Optional.of("Pear and rye cake, the long cut"),
                Optional.of("A dark, moist cake under a nutty crumble."),
                Optional.of(URI.create("https://example.org/pear-cake")),
                Optional.of(URI.create("https://example.org/films/pear-cake.mp4?cut=2&hd")),
                Optional.of(URI.create("https://example.org/player/pear-cake")),
                Optional.of(URI.create("https://example.org/pear-cake.jpg")),
                Optional.of(URI.create("https://example.org/whole.jpg")),
                Optional.of(LocalDate.of(2026, 5, 18)),
                Optional.of("Somebody"),
                Optional.of("Some kitchen"),
                Optional.of(Duration.ofMillis(275_480)));
    }

    /** The pear cake with chapters and everything that is known of a page. */
    static Edition pearCake() {
        return Edition.of(TestRecipes.asWritten(TestRecipes.pearCake()), Pantry.standard())
                .with(TestRecipes.alignment(
                        new long[] {1, 35, 80}, new long[] {2, 80, 130}, new long[] {3, 130, 200}, new long[] {
                            4, 200, 260
                        }))
                .with(everywhere());
    }

    static Edition of(Path recipe) {
        return Edition.of(scaled(recipe, Batch.WRITTEN), Pantry.standard());
    }

    static ScaledRecipe scaled(Path recipe, Batch batch) {
        return Scaler.scale(
                RecipeReader.read(recipe, recipe.getFileName().toString()), batch, RULES, Pantry.standard());
    }

    /** The sample's recipe and all invented ones of the tests that are written as Markdown. */
    static List<Path> recipes() {
        try (Stream<Path> episodes = Files.walk(Path.of("src/test/resources/org/misecue/compare/episodes"));
                Stream<Path> methods = Files.walk(Path.of("src/test/resources/org/misecue/recipe/methods"))) {
            return Stream.of(Stream.of(Path.of("sample-project/recipe.md")), episodes, methods)
                    .flatMap(each -> each)
                    .filter(path -> path.getFileName().toString().equals("recipe.md"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
