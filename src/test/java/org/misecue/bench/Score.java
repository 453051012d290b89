package org.misecue.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.misecue.compare.Verdict;
import org.misecue.spoken.Mechanism;

/** The figures over many cases. */
record Score(List<CaseScore> cases) {

    static Score of(List<EpisodeCase> cases, Set<Mechanism> mechanisms) {
        return new Score(
                cases.stream().map(one -> CaseScore.of(one, mechanisms)).toList());
    }

    List<Judged> written() {
        return all(CaseScore::written);
    }

    List<Judged> settings() {
        return all(CaseScore::settings);
    }

    List<Judged> dangerous() {
        return both().filter(Judged::isDangerous).toList();
    }

    long falseAlarms() {
        return count(both(), Judged::isFalseAlarm);
    }

    double evidence() {
        List<Judged> shown = both().filter(Judged::hasMoments).toList();
        return share(count(shown.stream(), Judged::isHit), shown.size());
    }

    double unwrittenPrecision() {
        long found = found();
        return share(found, found + sum(one -> one.invented().size()));
    }

    double unwrittenRecall() {
        long found = found();
        return share(found, found + sum(one -> one.overlooked().size()));
    }

    List<String> failures() {
        return cases.stream()
                .filter(one -> !one.failure().isEmpty())
                .map(one -> one.of().name() + ": " + one.failure())
                .toList();
    }

    static double accuracy(List<Judged> rows) {
        return share(count(rows.stream(), Judged::isRight), rows.size());
    }

    /** The mean of the verdicts' F1, of those that the truth has. */
    static double macroF1(List<Judged> rows) {
        List<Double> scores = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            String code = verdict.code();
            long expected = count(rows.stream(), row -> row.expected().equals(code));
            long got = count(rows.stream(), row -> row.got().equals(code));
            long right = count(rows.stream(), row -> row.isRight() && row.got().equals(code));
            if (expected > 0) {
                scores.add(2.0 * right / (expected + got));
            }
        }
        return scores.stream().mapToDouble(Double::doubleValue).average().orElse(1);
    }

    /** The figures in one line. */
    String line() {
        return String.format(
                Locale.ROOT,
                "%d cases, %d failed; written %d rows: accuracy %.3f, macro-F1 %.3f; settings %d rows: accuracy %.3f; "
                        + "dangerous %d of %d; false alarms %d; evidence %.3f; unwritten P %.2f R %.2f",
                cases.size(),
                failures().size(),
                written().size(),
                accuracy(written()),
                macroF1(written()),
                settings().size(),
                accuracy(settings()),
                dangerous().size(),
                count(both(), Judged::differs),
                falseAlarms(),
                evidence(),
                unwrittenPrecision(),
                unwrittenRecall());
    }

    /** How often each verdict of the truth was reported as each verdict, for the written quantities. */
    String confusion() {
        List<String> codes = Stream.of(Verdict.values()).map(Verdict::code).toList();
        List<String> reported =
                Stream.concat(codes.stream(), Stream.of(Judged.MISSING)).toList();
        StringBuilder table = new StringBuilder(String.format("%-21s", "written: truth x got"));
        reported.forEach(code -> table.append(String.format("%12s", code)));
        for (String expected : codes) {
            table.append(String.format("%n%21s", expected));
            for (String got : reported) {
                table.append(String.format(
                        "%12d",
                        count(
                                written().stream(),
                                row -> row.expected().equals(expected)
                                        && row.got().equals(got))));
            }
        }
        return table.toString();
    }

    private long found() {
        return sum(CaseScore::found);
    }

    private long sum(Function<CaseScore, Integer> number) {
        return cases.stream().mapToLong(number::apply).sum();
    }

    private Stream<Judged> both() {
        return Stream.concat(written().stream(), settings().stream());
    }

    private List<Judged> all(Function<CaseScore, List<Judged>> rows) {
        return cases.stream().flatMap(one -> rows.apply(one).stream()).toList();
    }

    private static long count(Stream<Judged> rows, Predicate<Judged> which) {
        return rows.filter(which).count();
    }

    private static double share(long part, long whole) {
        return whole == 0 ? 1 : (double) part / whole;
    }
}
