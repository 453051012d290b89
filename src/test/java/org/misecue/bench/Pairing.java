package org.misecue.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

/** Finds the reported row of each row of the truth: greedily, the best pair first, one to one. */
final class Pairing {

    private static final double SAME_AMOUNT = 0.015;

    /** Exact where it is defined so; ounces and pounds to the figures in which labels give them. */
    private static final Map<String, Measure> MEASURES = Map.ofEntries(
            Map.entry("ml", new Measure("volume", 1)),
            Map.entry("l", new Measure("volume", 1000)),
            Map.entry("tsp", new Measure("volume", 5)),
            Map.entry("tbsp", new Measure("volume", 15)),
            Map.entry("g", new Measure("mass", 1)),
            Map.entry("kg", new Measure("mass", 1000)),
            Map.entry("oz", new Measure("mass", 28.3495)),
            Map.entry("lb", new Measure("mass", 453.592)),
            Map.entry("min", new Measure("time", 1)),
            Map.entry("h", new Measure("time", 60)),
            Map.entry("cm", new Measure("length", 1)),
            Map.entry("in", new Measure("length", 2.54)));

    private record Measure(String of, double factor) {}

    private record Candidate(double affinity, double apart, int truth, int row) {}

    /** Ties go to rows that stand at the same place, then to the later one. */
    private static final Comparator<Candidate> BEST_FIRST = Comparator.comparingDouble(Candidate::affinity)
            .reversed()
            .thenComparing(Candidate::apart)
            .thenComparing(Comparator.comparingInt(Candidate::truth).reversed())
            .thenComparing(Comparator.comparingInt(Candidate::row).reversed());

    private Pairing() {}

    /** By the index in the truth; without those that nothing was reported for. */
    static Map<Integer, Row> ofLines(List<Row> truth, List<Row> reported) {
        return pairs(truth, reported, Pairing::lineAffinity);
    }

    static Map<Integer, Row> ofSettings(List<Row> truth, List<Row> reported) {
        return pairs(truth, reported, Pairing::settingAffinity);
    }

    private static Map<Integer, Row> pairs(List<Row> truth, List<Row> reported, ToDoubleBiFunction<Row, Row> affinity) {
        Map<Integer, Row> pairs = new HashMap<>();
        Set<Integer> used = new HashSet<>();
        for (Candidate candidate : candidates(truth, reported, affinity)) {
            if (!pairs.containsKey(candidate.truth()) && used.add(candidate.row())) {
                pairs.put(candidate.truth(), reported.get(candidate.row()));
            }
        }
        return pairs;
    }

    private static List<Candidate> candidates(
            List<Row> truth, List<Row> reported, ToDoubleBiFunction<Row, Row> affinity) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < truth.size(); i++) {
            for (int j = 0; j < reported.size(); j++) {
                double score = affinity.applyAsDouble(truth.get(i), reported.get(j));
                double apart = Math.abs((double) i / truth.size() - (double) j / reported.size());
                if (score > 0) {
                    candidates.add(new Candidate(score, apart, i, j));
                }
            }
        }
        candidates.sort(BEST_FIRST);
        return candidates;
    }

    /** How well a reported row matches a row of the truth; 0 is not at all. */
    private static double lineAffinity(Row truth, Row reported) {
        Set<String> own = NameWords.of(truth.ingredient());
        Set<String> other = NameWords.of(reported.ingredient());
        int shared = NameWords.shared(own, other);
        if (shared == 0) {
            return 0;
        }
        double affinity = 2.0 * shared / (own.size() + other.size());
        affinity += sameAmount(truth, reported) ? 1 : 0;
        boolean sameComponent = NameWords.meet(NameWords.of(truth.component()), NameWords.of(reported.component()));
        return sameComponent ? affinity + 0.6 : affinity;
    }

    private static double settingAffinity(Row truth, Row reported) {
        return truth.kind().equals(reported.kind()) && sameAmount(truth, reported) ? 1 : 0;
    }

    private static boolean sameAmount(Row one, Row other) {
        Measure measure = measure(one);
        Measure otherMeasure = measure(other);
        if (!measure.of().equals(otherMeasure.of())
                || one.amount().isEmpty()
                || other.amount().isEmpty()) {
            return false;
        }
        double a = one.amount().getAsDouble() * measure.factor();
        double b = other.amount().getAsDouble() * otherMeasure.factor();
        return Math.abs(a - b) <= SAME_AMOUNT * Math.max(Math.max(Math.abs(a), Math.abs(b)), 1e-9);
    }

    private static Measure measure(Row row) {
        return MEASURES.getOrDefault(row.unit(), new Measure(row.unit(), 1));
    }
}
