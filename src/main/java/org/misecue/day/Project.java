package org.misecue.day;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A day's works and what they ask of each other: the scheduling problem, without a word about baking.
 *
 * @param works in the order in which they are told; their places name them
 * @param lags between works
 * @param means how many there are of each: presenters, cameras, rings of the hob
 * @param ovens how many
 * @param shelves how many bakes of one heat an oven takes
 * @param change minutes to move the camera from one set-up to another
 * @param limits what the clock asks
 */
record Project(
        List<Work> works,
        List<Lag> lags,
        Map<String, Integer> means,
        int ovens,
        int shelves,
        int change,
        List<Limit> limits) {

    /** The one who must not stand idle. */
    static final String PRESENTER = "presenter";

    /** What films. */
    static final String CAMERA = "camera";

    /** Works and precedences only, as project scheduling problems are published. */
    static Project plain(List<Work> works, List<Lag> lags, Map<String, Integer> means) {
        return new Project(works, lags, means, 0, 0, 0, List.of());
    }

    Project with(List<Work> otherWorks, List<Lag> otherLags, List<Limit> otherLimits) {
        return new Project(otherWorks, otherLags, means, ovens, shelves, change, otherLimits);
    }

    /** The same without a wish: a bound of a lag falls away with it, and a break keeps its place in the list. */
    Project without(String wish) {
        return with(
                works,
                lags.stream()
                        .map(lag -> lag.wish().filter(wish::equals).isPresent()
                                ? new Lag(lag.before(), lag.after(), lag.least(), OptionalInt.empty(), Optional.empty())
                                : lag)
                        .toList(),
                limits.stream()
                        .map(limit ->
                                limit instanceof Limit.Pause && limit.wish().equals(wish) ? Limit.Pause.NONE : limit)
                        .filter(limit -> !limit.wish().equals(wish))
                        .toList());
    }

    boolean needsHands(int work) {
        return works.get(work).takes().containsKey(PRESENTER)
                || works.get(work).takes().containsKey(CAMERA);
    }

    /** Longer than any sensible plan. */
    int horizon() {
        int lagging = lags.stream().mapToInt(Lag::least).sum();
        int working = works.stream()
                .mapToInt(work -> work.minutes()
                        + change
                        + work.heat().map(Work.Heat::heating).orElse(0))
                .sum();
        int latest = limits.stream().mapToInt(Project::latest).max().orElse(0);
        return lagging + working + latest;
    }

    private static int latest(Limit limit) {
        if (limit instanceof Limit.Window window) {
            return window.from();
        }
        if (limit instanceof Limit.At at) {
            return at.minute();
        }
        if (limit instanceof Limit.Away away) {
            return away.to();
        }
        if (limit instanceof Limit.NotBefore notBefore) {
            return notBefore.minute();
        }
        return limit instanceof Limit.Pause pause ? pause.latest() + pause.minutes() : 0;
    }
}
