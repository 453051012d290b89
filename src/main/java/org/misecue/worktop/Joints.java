package org.misecue.worktop;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.misecue.narration.Clock;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Where the narrations of one film meet: what is said twice at a time, and long silence between two. */
final class Joints {

    /** Two microphones, or an offset that is a little wrong. Common practice, no source. */
    private static final Duration AT_ONCE = Duration.ofSeconds(2);

    /** A narration that is missing, or an offset that is too large. Common practice, no source. */
    private static final Duration SILENCE = Duration.ofSeconds(60);

    private Joints() {}

    /** @return what is wrong between a narration and one before it on the same clock */
    static Optional<Note> overlap(Narration before, Narration next) {
        List<Cue> earlier = before.cues();
        Duration both = Duration.ZERO;
        Optional<Duration> from = Optional.empty();
        int first = 0;
        for (Cue cue : next.cues()) {
            while (first < earlier.size() && earlier.get(first).end().compareTo(cue.start()) <= 0) {
                first++;
            }
            for (int i = first; i < earlier.size() && earlier.get(i).start().compareTo(cue.end()) < 0; i++) {
                Duration start = later(earlier.get(i).start(), cue.start());
                Duration shared = earlier(earlier.get(i).end(), cue.end()).minus(start);
                if (!shared.isNegative() && !shared.isZero()) {
                    both = both.plus(shared);
                    from = from.or(() -> Optional.of(start));
                }
            }
        }
        Duration together = both;
        return from.filter(any -> together.compareTo(AT_ONCE) > 0)
                .map(at -> new Note(
                        Place.of(next.source()),
                        "from %s on it is said over what %s says, for %d seconds in all; correct an offset under narration in episode.yaml, or take one of them out"
                                .formatted(Clock.hms(at), before.source(), together.toSeconds())));
    }

    /** @param before of all that begin before the next, the one that ends last */
    static Optional<Note> silence(Narration before, Narration next) {
        Duration ends = before.end();
        Duration silent = next.start().minus(ends);
        return Optional.of(silent)
                .filter(time -> !next.cues().isEmpty() && time.compareTo(SILENCE) > 0)
                .map(time -> new Note(
                        Place.of(next.source()),
                        "nothing is said between the end of %s at %s and the begin of this at %s; if that is not so, correct an offset under narration in episode.yaml, or add what is missing"
                                .formatted(before.source(), Clock.hms(ends), Clock.hms(next.start()))));
    }

    private static Duration later(Duration a, Duration b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static Duration earlier(Duration a, Duration b) {
        return a.compareTo(b) <= 0 ? a : b;
    }
}
