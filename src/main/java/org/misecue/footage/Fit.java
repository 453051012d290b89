package org.misecue.footage;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The straight line through what was heard at several places: how far the clocks are apart, and how that changes.
 *
 * @param later how far the first clock is ahead when it shows zero, in samples of {@link Mono}
 * @param gain by how much of a sample that grows in a sample of the first clock
 * @param from on the first clock, in samples: the first place
 * @param to the last place
 * @param alike how many places lie on the line
 * @param tried how many were listened to
 */
record Fit(double later, double gain, long from, long to, int alike, int tried) {

    private static final int FEWEST = 3;

    /** Sound from elsewhere in the kitchen comes a little earlier to one microphone and later to the other: 3 metres. */
    private static final double BESIDE = Mono.RATE / 100.0;

    /** Worse clocks than this, one part in two thousand, belong to nothing that records films; common practice, no source. */
    private static final double WORST = 1 / 2000.0;

    private static final double NANOS = 1e9 / Mono.RATE;
    private static final double HOUR = 3600e9;

    /** Whether there can still be enough places that are alike. */
    static boolean canHold(int missed, int tried) {
        return isEnough(tried - missed, tried);
    }

    /** Half of all places at least. */
    private static boolean isEnough(int alike, int tried) {
        return alike >= FEWEST && 2 * alike >= tried;
    }

    /** Empty where too few places lie on one line. */
    static Optional<Fit> of(List<Spot.Heard> heard, int tried) {
        double gain = middle(IntStream.range(0, heard.size()).boxed().flatMapToDouble(i -> IntStream.range(0, i)
                .mapToDouble(j -> slope(heard.get(j), heard.get(i)))));
        double later = middle(heard.stream().mapToDouble(one -> one.later() - gain * one.at()));
        List<Spot.Heard> on = heard.stream()
                .filter(one -> Math.abs(one.later() - later - gain * one.at()) <= BESIDE)
                .toList();
        if (!isEnough(on.size(), tried) || Math.abs(gain) > WORST) {
            return Optional.empty();
        }
        return Optional.of(
                new Fit(later, gain, on.get(0).at(), on.get(on.size() - 1).at(), on.size(), tried));
    }

    private static double slope(Spot.Heard one, Spot.Heard two) {
        return (double) (two.later() - one.later()) / (two.at() - one.at());
    }

    private static double middle(DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        int half = sorted.length / 2;
        if (sorted.length == 0) {
            return 0;
        }
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /** @param noticed by how much the clocks must run apart between the first place and the last for it to be told */
    Offset offset(Duration noticed, BigDecimal clearness) {
        Offset.BySound basis = new Offset.BySound(alike, tried, clearness);
        if (Math.abs(gain) * (to - from) * NANOS <= noticed.toNanos()) {
            double halfway = later + gain * (from + to) / 2;
            return new Offset(Duration.ofNanos(Math.round(halfway * NANOS)), Duration.ZERO, basis);
        }
        // Where the second begins after the first, its beginning is on the line where it is as far ahead as it shows.
        double begins = later > 0 ? later / (1 - gain) : later;
        return new Offset(
                Duration.ofNanos(Math.round(begins * NANOS)),
                Duration.ofNanos(Math.round(gain / (1 - gain) * HOUR)),
                basis);
    }
}
