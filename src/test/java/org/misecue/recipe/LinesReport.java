package org.misecue.recipe;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many ingredient lines are wholly right: amount, upper amount, unit, name and preparation. Run by hand over one or
 * more folders of truth; with {@code --rows} it prints what is wrong, which nobody should look at for the half that was
 * held back. Each file is read as a whole recipe through {@link RecipeReader}, as a user's would be.
 */
final class LinesReport {

    record Tally(int right, int lines) {
        Tally plus(Tally other) {
            return new Tally(right + other.right, lines + other.lines);
        }

        double rate() {
            return lines == 0 ? 0 : (double) right / lines;
        }
    }

    private final Map<String, Tally> styles = new TreeMap<>();
    private final Map<String, Integer> faults = new TreeMap<>();
    private final List<String> rows = new ArrayList<>();

    private LinesReport() {}

    static LinesReport over(Path folder) throws IOException {
        LinesReport report = new LinesReport();
        Map<String, List<LineTruth>> files = new TreeMap<>();
        LineTruth.of(folder).forEach(row -> files.computeIfAbsent(row.style(), any -> new ArrayList<>())
                .add(row));
        for (List<LineTruth> file : files.values()) {
            report.file(file);
        }
        return report;
    }

    private void file(List<LineTruth> truths) throws IOException {
        Path file = Files.createTempFile("lines", ".md");
        try {
            StringBuilder text = new StringBuilder("# Lines\n\nMakes 1 cake\n\n## Ingredients\n\n");
            truths.forEach(truth -> text.append("- ").append(truth.text()).append('\n'));
            Files.writeString(file, text + "\n## Method\n\n1. Mix.\n");
            List<IngredientLine> lines = RecipeReader.read(file, "lines.md").components().stream()
                    .flatMap(component -> component.lines().stream())
                    .toList();
            for (int at = 0; at < truths.size(); at++) {
                int number = at + 7;
                List<String> wrong = lines.stream()
                        .filter(line -> line.line() == number)
                        .findFirst()
                        .map(truths.get(number - 7)::faults)
                        .orElse(List.of("line not read as an ingredient"));
                count(truths.get(at), wrong);
            }
        } finally {
            Files.delete(file);
        }
    }

    private void count(LineTruth truth, List<String> wrong) {
        styles.merge(truth.style(), new Tally(wrong.isEmpty() ? 1 : 0, 1), Tally::plus);
        wrong.forEach(fault -> faults.merge(fault.split(" ", 2)[0], 1, Integer::sum));
        if (!wrong.isEmpty()) {
            rows.add("%-20s %s%n%22s%s".formatted(truth.style(), truth.text(), "", String.join("; ", wrong)));
        }
    }

    Tally whole() {
        return styles.values().stream().reduce(new Tally(0, 0), Tally::plus);
    }

    public static void main(String[] args) throws IOException {
        boolean rows = List.of(args).contains("--rows");
        for (String folder : args) {
            if (!folder.startsWith("--")) {
                LinesReport report = over(Path.of(folder));
                System.out.println(folder);
                report.styles.forEach((style, tally) -> System.out.printf(
                        "  %-24s %3d of %3d  %.3f%n", style, tally.right(), tally.lines(), tally.rate()));
                System.out.printf(
                        "  %-24s %3d of %3d  %.3f   wrong: %s%n",
                        "all",
                        report.whole().right(),
                        report.whole().lines(),
                        report.whole().rate(),
                        report.faults);
                if (rows) {
                    report.rows.forEach(System.out::println);
                }
            }
        }
    }
}
