package org.misecue.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.misecue.day.DayPlan;
import org.misecue.day.DayPlanner;
import org.misecue.day.DaySettings;
import org.misecue.day.Entry;
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
import org.misecue.shots.ShotPlanner;
import org.misecue.shots.ShotTemplates;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * How long filming days of invented episodes are in the order of the recipe and as planned, and how long planning takes,
 * the comparison with the recipe's order and with stand-ins included. Run by hand.
 */
@Command(name = "DayReport", mixinStandardHelpOptions = true)
public final class DayReport implements Callable<Integer> {

    private static final List<Path> USUAL = List.of(
            Path.of("src/test/resources/org/misecue/recipe/methods"),
            Path.of("src/test/resources/org/misecue/compare/episodes"));
    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 4, 9, 0);

    @Spec
    private CommandSpec spec;

    @Parameters(description = "Folders of episodes with a recipe each.")
    private List<Path> folders = new ArrayList<>();

    @Option(names = "--takes", description = "How often each shot that uses food is filmed.")
    private int takes = 1;

    @Option(names = "--joined", description = "Two dishes on one day, to see long days.")
    private boolean joined;

    @Option(names = "--kitchens", description = "The same with other people and equipment.")
    private boolean kitchens;

    public static void main(String... args) {
        System.exit(new CommandLine(new DayReport()).execute(args));
    }

    @Override
    public Integer call() throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        List<Recipe> recipes = new ArrayList<>();
        for (Path folder : folders.isEmpty() ? USUAL : folders) {
            recipes.addAll(read(folder));
        }
        if (joined) {
            List<Recipe> pairs = new ArrayList<>();
            for (int at = 0; at + 1 < recipes.size(); at += 2) {
                pairs.add(TwoDishes.of(recipes.get(at), recipes.get(at + 1)));
            }
            recipes = pairs;
        }
        out.println("rows  as written  planned  saved  proved  seconds  dish");
        table(out, recipes, kitchen(1, 1, true));
        if (kitchens) {
            out.println("two ovens");
            table(out, recipes, kitchen(1, 2, true));
            out.println("no stand mixer");
            table(out, recipes, kitchen(1, 1, false));
            out.println("two presenters, two cameras");
            table(out, recipes, kitchen(2, 1, true));
        }
        out.flush();
        return 0;
    }

    private static List<Recipe> read(Path folder) throws IOException {
        List<Recipe> recipes = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith("recipe."))
                    .sorted()
                    .toList()) {
                recipes.add(RecipeReader.read(file, file.toString(), Pantry.standard()));
            }
        }
        return recipes;
    }

    private static DaySettings kitchen(int people, int ovens, boolean mixer) {
        return DaySettings.usual(MORNING).with(people, people, ovens, mixer);
    }

    private void table(PrintWriter out, List<Recipe> recipes, DaySettings settings) {
        long saved = 0;
        long written = 0;
        int proved = 0;
        double slowest = 0;
        for (Recipe recipe : recipes) {
            long begin = System.nanoTime();
            DayPlan plan = plan(recipe, settings);
            double seconds = (System.nanoTime() - begin) / 1e9;
            long naive = minutes(plan.naiveEnd().orElse(plan.end()));
            out.println(String.format(
                    Locale.ROOT,
                    "%4d  %10s  %7s  %5s  %6s  %7.2f  %s",
                    plan.entries().stream().filter(DayReport::isTask).count(),
                    plan.naiveEnd().isPresent() ? clock(naive) : "impossible",
                    clock(minutes(plan.end())),
                    clock(plan.saved().toMinutes()),
                    plan.proved() ? "yes" : "no",
                    seconds,
                    recipe.title()));
            saved += plan.saved().toMinutes();
            written += naive;
            proved += plan.proved() ? 1 : 0;
            slowest = Math.max(slowest, seconds);
        }
        out.println(String.format(
                Locale.ROOT,
                "%d days, %d proved; %s saved of %s (%.1f %%); slowest %.2f s",
                recipes.size(),
                proved,
                clock(saved),
                clock(written),
                100.0 * saved / Math.max(1, written),
                slowest));
    }

    private static boolean isTask(Entry entry) {
        return entry.kind() != Entry.Kind.JOB && entry.kind() != Entry.Kind.HEAT;
    }

    private static long minutes(LocalDateTime time) {
        return Duration.between(MORNING, time).toMinutes();
    }

    private static String clock(long minutes) {
        return "%d:%02d".formatted(minutes / 60, minutes % 60);
    }

    private DayPlan plan(Recipe recipe, DaySettings settings) {
        ScaledRecipe scaled = Scaler.scale(recipe, Batch.WRITTEN, ScaleRules.standard(), Pantry.standard());
        PrepPlan prep = PrepPlanner.plan(
                scaled, Pantry.standard(), PrepSettings.standard().withTakes(takes));
        return new DayPlanner(
                        recipe, prep, ShotPlanner.plan(scaled, prep, ShotTemplates.standard()), settings, words -> {})
                .plan();
    }
}
