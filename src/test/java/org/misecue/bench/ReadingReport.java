package org.misecue.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.misecue.recipe.ReadingParts;
import org.misecue.recipe.manuscript.Manuscript;
import org.misecue.recipe.manuscript.Opening;

/**
 * How much processor time Tika takes for a document, and how much of it we take for everything behind the library that
 * opens it: lines first, then the recipe. Both go in turn, so that what else the machine does slows both; the share is
 * the middle one of many rounds. With {@code -Xbatch} a busy machine warms up as well.
 */
public final class ReadingReport {

    private static final List<String> KINDS = List.of("docx", "odt", "pdf", "html", "rtf");

    /** Nanoseconds of one round. */
    private record Round(long tika, long lines, long recipe) {

        double share() {
            return (double) (lines + recipe) / tika;
        }
    }

    private ReadingReport() {}

    /** @param args how many rounds to measure, after twice as many that are not */
    public static void main(String... args) throws Exception {
        int rounds = args.length == 0 ? 500 : Integer.parseInt(args[0]);
        System.out.println("kind  Tika µs  lines µs  recipe µs  share");
        for (String kind : KINDS) {
            List<Round> measured = rounds(kind, rounds);
            System.out.printf(
                    "%-5s %7.0f %9.0f %10.0f  %.3f%n",
                    kind,
                    middle(measured.stream().map(each -> each.tika / 1e3)),
                    middle(measured.stream().map(each -> each.lines / 1e3)),
                    middle(measured.stream().map(each -> each.recipe / 1e3)),
                    middle(measured.stream().map(Round::share)));
        }
        perSecond(rounds);
    }

    private static List<Round> rounds(String kind, int rounds) throws Exception {
        byte[] bytes = RecipeDocuments.of(kind);
        List<Round> measured = new ArrayList<>();
        for (int round = 0; round < 3 * rounds; round++) {
            Supplier<Manuscript> behind = Opening.behindLibrary(kind, bytes);
            long tika = time(() -> ReadingParts.tika(bytes));
            List<Manuscript> read = new ArrayList<>();
            long lines = time(() -> read.add(behind.get()));
            long recipe = time(() -> ReadingParts.parsed(read.get(0)));
            if (round >= 2 * rounds) {
                measured.add(new Round(tika, lines, recipe));
            }
        }
        return measured;
    }

    private static void perSecond(int rounds) throws Exception {
        Manuscript manuscript = Opening.markdown(RecipeDocuments.markdown());
        List<String> lines = ReadingParts.parsed(manuscript).lines().stream()
                .map(line -> line.text())
                .toList();
        List<Double> ofLines = new ArrayList<>();
        List<Double> ofRecipes = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            ofLines.add(lines.size()
                    * 1e9
                    / time(() -> lines.stream().map(ReadingParts::line).toList()));
            ofRecipes.add(1e9 / time(() -> ReadingParts.parsed(manuscript)));
        }
        System.out.printf(
                "%.0f ingredient lines and %.0f recipes in a second%n",
                middle(ofLines.stream()), middle(ofRecipes.stream()));
    }

    private static long time(Callable<?> work) throws Exception {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.call();
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
    }

    private static double middle(java.util.stream.Stream<Double> values) {
        return Percentile.of(values.sorted().toList(), 50);
    }
}
