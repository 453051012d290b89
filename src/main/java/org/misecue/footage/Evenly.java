package org.misecue.footage;

import java.time.Duration;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/** Moments spread evenly: the middles of so many parts of equal length. */
final class Evenly {

    private Evenly() {}

    /** The moments that a sheet shows; none where the film has nothing of it. */
    static SortedSet<Duration> moments(SheetPlan plan, FilmInfo film) {
        List<SheetPlan.Stretch> stretches = plan.stretches().stream()
                .map(part -> new SheetPlan.Stretch(part.from(), earlier(part.to(), film.length())))
                .filter(part -> part.from().compareTo(part.to()) < 0)
                .toList();
        Duration whole = stretches.stream().map(SheetPlan.Stretch::length).reduce(Duration.ZERO, Duration::plus);
        SortedSet<Duration> moments = new TreeSet<>();
        if (!stretches.isEmpty()) {
            int count = (int) Math.max(1, Math.min(plan.most(), whole.toSeconds()));
            for (int i = 0; i < count; i++) {
                moments.add(middle(at(stretches, whole.multipliedBy(2L * i + 1).dividedBy(2L * count)), film));
            }
        }
        return moments;
    }

    private static Duration at(List<SheetPlan.Stretch> stretches, Duration offset) {
        Duration rest = offset;
        for (SheetPlan.Stretch stretch : stretches) {
            if (rest.compareTo(stretch.length()) < 0) {
                return stretch.from().plus(rest);
            }
            rest = rest.minus(stretch.length());
        }
        return stretches.get(stretches.size() - 1).from();
    }

    /** The middle of the frame that is on screen, so that no container's rounding leads to its neighbour. */
    private static Duration middle(Duration at, FilmInfo film) {
        return film.picture()
                .filter(picture -> !picture.variableRate())
                .map(Track.Picture::rate)
                .map(rate -> {
                    long frame = rate.frameAt(at);
                    return rate.startOf(frame).plus(rate.startOf(frame + 1)).dividedBy(2);
                })
                .orElse(at);
    }

    private static Duration earlier(Duration one, Duration other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
