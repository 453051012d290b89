package org.misecue.footage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A place in two films at which they are held against each other.
 *
 * @param from in the first film, in samples of {@link Mono}
 * @param length in samples
 */
record Spot(long from, int length) {

    private static final int MOST = 12;
    private static final int PARTS = 48;
    private static final int SHORTEST = 3 * Levels.A_SECOND / 2;
    private static final int LONGEST = 3 * Levels.A_SECOND;

    /** Clocks that drift put a sound this far from where the middle of the film makes it expected: half a second. */
    private static final int ASIDE = Mono.RATE / 2;

    /** A room in which nothing happens goes up and down less, in decibels: white noise by 2.2 at most, measured. */
    private static final double LIVELY = 2.4;

    /**
     * Where both films are lively, spread over the time in which both would have run. What is said in a tenth of a take is
     * enough; the quiet rest has nothing to tell.
     */
    static List<Spot> spread(Levels first, Levels second, int later) {
        int begin = Math.max(0, later);
        int common = Math.min(first.steps(), second.steps() + later) - begin;
        int length = Math.max(SHORTEST, Math.min(LONGEST, common / MOST));
        int parts = Math.min(PARTS, common / length);
        List<Spot> spots = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            int from = begin + (int) ((long) common * part / parts);
            int to = begin + (int) ((long) common * (part + 1) / parts);
            liveliest(first, second, later, from, to, length).ifPresent(spots::add);
        }
        int most = Math.min(MOST, spots.size());
        return IntStream.range(0, most)
                .mapToObj(i -> spots.get(i * (spots.size() - 1) / Math.max(1, most - 1)))
                .toList();
    }

    private static Optional<Spot> liveliest(Levels first, Levels second, int later, int from, int to, int length) {
        Optional<Spot> best = Optional.empty();
        double most = LIVELY;
        for (int at = from; at + length <= to; at += length / 2) {
            Spot spot = new Spot((long) at * Levels.STEP, length * Levels.STEP);
            double unrest = spot.unrest(first, second, later);
            if (unrest > most) {
                most = unrest;
                best = Optional.of(spot);
            }
        }
        return best;
    }

    /** How much the quieter one goes up and down here, in decibels. */
    double unrest(Levels first, Levels second, int later) {
        int at = (int) (from / Levels.STEP);
        int to = at + length / Levels.STEP;
        return Math.min(first.unrest(at, to), second.unrest(at - later, to - later));
    }

    /**
     * Looks for what the first film holds here in the second.
     *
     * @param later how long after the first the second is thought to begin, in samples
     * @return empty where it is not plainly there
     */
    Optional<Heard> listen(long later, Excerpts first, Excerpts second) {
        float[] passage = first.read(from, length);
        long begin = from - later - ASIDE;
        OptionalInt found = Passage.find(passage, second.read(begin, length + 2 * ASIDE));
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(new Heard(from + length / 2, from - (begin + found.getAsInt())));
    }

    /**
     * That the same was heard.
     *
     * @param at on the first clock, in samples
     * @param later by how much the first clock is ahead there
     */
    record Heard(long at, long later) {}
}
