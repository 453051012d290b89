package org.misecue.bench;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.misecue.recipe.ReadingParts;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.manuscript.Manuscript;
import org.misecue.recipe.manuscript.Opening;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.openjdk.jmh.results.RunResult;

/**
 * How fast a recipe is read, and how much of that is the work of the library that opens the document: {@code tika} is
 * Tika's extraction alone, {@code ours} is everything behind it, or behind PDFBox and the parser of web pages, and should
 * be under a tenth of the first. {@code ReadingReport} tells the same quicker, on a busy machine too.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReadingBenchmark {

    private static final int LINES = 6;

    /** Ingredient lines in one style after the other. */
    @State(Scope.Benchmark)
    public static class Lines {

        private final List<String> lines = List.of(
                "200g/7oz butter, softened",
                "1½ cups (190 g) plain flour",
                "2 heaped tbsp cocoa powder, sifted",
                "3 eggs plus 1 yolk",
                "1 x 400 g tin of chickpeas, drained",
                "half a lemon, juiced (optional)");
    }

    /** The same recipe in one kind of document. */
    @State(Scope.Benchmark)
    public static class Opened {

        @Param({"docx", "odt", "pdf", "html", "rtf"})
        public String kind;

        private byte[] bytes;
        private Supplier<Manuscript> ours;

        @Setup
        public void open() throws Exception {
            bytes = RecipeDocuments.of(kind);
            ours = Opening.behindLibrary(kind, bytes);
        }
    }

    /** Whole recipes in Markdown, from the text to what is understood. */
    @State(Scope.Benchmark)
    public static class Markdown {

        private String text;

        @Setup
        public void write() throws IOException {
            text = RecipeDocuments.markdown();
        }
    }

    /** Ingredient lines in a second. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.SECONDS)
    @OperationsPerInvocation(LINES)
    public void line(Lines state, Blackhole out) {
        state.lines.forEach(line -> out.consume(ReadingParts.line(line)));
    }

    /** Whole recipes in a second. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.SECONDS)
    public Recipe recipe(Markdown state) {
        return ReadingParts.parsed(Opening.markdown(state.text));
    }

    @Benchmark
    public String tika(Opened state) throws Exception {
        return ReadingParts.tika(state.bytes);
    }

    @Benchmark
    public Recipe ours(Opened state) {
        return ReadingParts.parsed(state.ours.get());
    }

    /** Takes JMH's own options; tells at the end what share of Tika's time ours is. */
    public static void main(String... args) throws Exception {
        Map<String, Double> scores = new TreeMap<>();
        for (RunResult result : BenchmarkRun.of(ReadingBenchmark.class, args)) {
            String kind = result.getParams().getParam("kind");
            if (kind != null) {
                scores.put(
                        kind + " " + result.getPrimaryResult().getLabel(),
                        result.getPrimaryResult().getScore());
            }
        }
        scores.forEach((name, ours) -> {
            Double tika = scores.get(name.replace(" ours", " tika"));
            if (name.endsWith(" ours") && tika != null) {
                System.out.printf("%s: %.3f of Tika's time%n", name, ours / tika);
            }
        });
    }
}
