package org.misecue.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.misecue.compare.Comparer;
import org.misecue.compare.Comparison;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.QuantityListener;
import org.misecue.spoken.WordStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;

/**
 * How fast the engine is for twenty minutes of talk against a recipe of twenty lines, and how that grows with the talk:
 * ten times the words should take ten times as long.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class EngineBenchmark {

    /** How many times the twenty minutes. */
    @Param({"1", "10", "100"})
    public int times;

    private Recipe recipe;
    private List<Narration> narrations;

    /** Takes JMH's own options, such as {@code -p times=10} and {@code -prof gc}; {@code -h} lists them. */
    public static void main(String... args) throws RunnerException, CommandLineOptionException, IOException {
        GrowthTable.lines(BenchmarkRun.of(EngineBenchmark.class, args)).forEach(System.out::println);
    }

    @Setup
    public void talk() throws IOException {
        recipe = recipe();
        narrations = List.of(InventedNarration.of(recipe, times));
    }

    private static Recipe recipe() throws IOException {
        try (InputStream in = Objects.requireNonNull(EngineBenchmark.class.getResourceAsStream("recipe.md"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Scratch.read("recipe.md", text, file -> RecipeReader.read(file, "recipe.md"));
        }
    }

    /** Everything from words to amounts and names. */
    @Benchmark
    public void hearing(Blackhole out) {
        WordStream words = WordStream.of(narrations);
        out.consume(new QuantityListener(words).all());
        out.consume(new NameListener(words, recipe, Pantry.standard()).all());
    }

    /** The whole comparison, hearing included. */
    @Benchmark
    public Comparison comparing() {
        return Comparer.compare(recipe, narrations, Pantry.standard());
    }
}
