package org.misecue.bench;

import java.util.List;
import java.util.Optional;

/** One row of the truth and what was reported for it. */
record Judged(EpisodeCase in, Row truth, Optional<Row> reported) {

    /** Reported for a row that no reported row was found for. */
    static final String MISSING = "missing";

    /** How far a moment shown may lie outside a cue with the deciding words, in seconds. */
    private static final double LEEWAY = 3;

    /** How long a last cue is taken to be, in seconds. */
    private static final double LAST_CUE = 30;

    String expected() {
        return truth.verdict();
    }

    String got() {
        return reported.map(Row::verdict).orElse(MISSING);
    }

    boolean isRight() {
        return expected().equals(got());
    }

    boolean differs() {
        return expected().equals("differs");
    }

    /** A wrong amount passed off as a right one: the worst that can happen. */
    boolean isDangerous() {
        return differs() && (got().equals("agrees") || got().equals("approximate"));
    }

    boolean isFalseAlarm() {
        return expected().equals("agrees") && got().equals("differs");
    }

    /** Whether the truth knows moments that should be shown. */
    boolean hasMoments() {
        return !truth.at().isEmpty();
    }

    /** Whether some moment shown lies in a cue that holds the deciding words, or very near it. */
    boolean isHit() {
        List<Row.Shown> evidence = reported.map(Row::evidence).orElse(List.of());
        return truth.at().stream().anyMatch(cue -> evidence.stream()
                .anyMatch(shown -> shown.at() >= cue - LEEWAY && shown.at() <= endOf(cue) + LEEWAY));
    }

    private double endOf(double cue) {
        return in.cueStarts().stream()
                .filter(start -> start > cue + 0.5)
                .findFirst()
                .orElse(cue + LAST_CUE);
    }

    @Override
    public String toString() {
        return String.format(
                "%s: %s %s: %s (said %s), got %s %s | %s",
                in.name(),
                truth.name(),
                truth.written(),
                expected(),
                truth.spoken(),
                got(),
                reported.map(Row::evidence).orElse(List.of()),
                truth.why());
    }
}
