package org.misecue.bench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.misecue.spoken.Mechanism;

/** What each mechanism is worth: the figures with that one switched off, and how far they are from all on. */
final class Ablation {

    private record Column(String title, int digits, ToDoubleFunction<Score> figure) {

        String heading() {
            return String.format("  %-13s", title);
        }

        String cell(Score score, Score all) {
            double value = figure.applyAsDouble(score);
            double gap = value - figure.applyAsDouble(all);
            String change = Math.abs(gap) < 0.0005 ? "" : number("%+." + digits + "f", gap);
            return String.format("%7s%8s", number("%." + digits + "f", value), change);
        }

        private static String number(String form, double value) {
            return String.format(Locale.ROOT, form, value);
        }
    }

    private static final List<Column> COLUMNS = List.of(
            new Column("written", 3, score -> Score.accuracy(score.written())),
            new Column("macro-F1", 3, score -> Score.macroF1(score.written())),
            new Column("dangerous", 0, score -> score.dangerous().size()),
            new Column("false alarms", 0, Score::falseAlarms),
            new Column("settings", 3, score -> Score.accuracy(score.settings())),
            new Column("unwritten P", 3, Score::unwrittenPrecision),
            new Column("unwritten R", 3, Score::unwrittenRecall));

    private Ablation() {}

    static List<String> table(List<EpisodeCase> cases) {
        Score all = Score.of(cases, EnumSet.allOf(Mechanism.class));
        List<String> lines = new ArrayList<>();
        lines.add(line("off", COLUMNS.stream().map(Column::heading).toList()));
        lines.add(line("(none)", cells(all, all)));
        for (Mechanism mechanism : Mechanism.values()) {
            Score without = Score.of(cases, EnumSet.complementOf(EnumSet.of(mechanism)));
            lines.add(line(mechanism.name(), cells(without, all)));
        }
        return lines;
    }

    private static List<String> cells(Score score, Score all) {
        return COLUMNS.stream().map(column -> column.cell(score, all)).toList();
    }

    private static String line(String name, List<String> cells) {
        StringBuilder line = new StringBuilder(String.format("%-20s", name));
        cells.forEach(cell -> line.append(String.format("%15s", cell)));
        return line.toString().stripTrailing();
    }
}
