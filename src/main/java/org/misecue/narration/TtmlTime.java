package org.misecue.narration;

import java.time.Duration;
import java.util.Optional;

/**
 * When an element is on: from its begin, until its end where that is known.
 *
 * @param told whether a time stands on it or on one around it
 */
record TtmlTime(Duration begin, Optional<Duration> end, boolean told) {

    static final TtmlTime ALWAYS = new TtmlTime(Duration.ZERO, Optional.empty(), false);

    /**
     * A child; no child outlasts its parent.
     *
     * @param from what its times count from
     * @param begin as it stands on the child, and so on
     */
    TtmlTime child(Duration from, Optional<Duration> begin, Optional<Duration> end, Optional<Duration> dur) {
        Duration starts = from.plus(begin.orElse(Duration.ZERO));
        Optional<Duration> ends = earlier(end.map(from::plus), dur.map(starts::plus));
        return new TtmlTime(
                starts, earlier(ends, this.end), told || begin.isPresent() || end.isPresent() || dur.isPresent());
    }

    /** Whether it begins only when what it stands in is over, and is never on; where that one never is, it has its way. */
    boolean isTooLateFor(TtmlTime around) {
        return around.end.filter(ends -> begin.compareTo(ends) >= 0).isPresent() && !begin.equals(around.begin);
    }

    private static Optional<Duration> earlier(Optional<Duration> one, Optional<Duration> other) {
        if (one.isPresent() && other.isPresent()) {
            return one.get().compareTo(other.get()) <= 0 ? one : other;
        }
        return one.or(() -> other);
    }
}
