package org.misecue.desk.timers;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.episode.Timer;
import org.misecue.episode.Timers;

/**
 * The timers as a page shows them.
 *
 * @param timers those that run, and those that have rung
 * @param stopped one that was stopped just now
 * @param action where the page's timer buttons lead
 * @param now by the desk's clock; devices count from it, however their own clocks go
 * @param zone of the desk
 */
public record TimerBoard(List<Timer> timers, Optional<Timer> stopped, String action, Instant now, ZoneId zone) {

    /** How long the stopping of one can be taken back. */
    private static final Duration REGRET = Duration.ofMinutes(10);

    /** Those of an episode as they are on the disk now. */
    public static TimerBoard of(OpenEpisode episode, Clock clock, String action) {
        List<Timer> all = new Timers(episode.worktop().episode()).read();
        Instant now = clock.instant();
        return new TimerBoard(
                all.stream().filter(Timer::runs).toList(),
                all.stream()
                        .filter(timer -> timer.stopped()
                                .filter(at -> at.toInstant().plus(REGRET).isAfter(now))
                                .isPresent())
                        .findFirst(),
                action,
                now,
                clock.getZone());
    }

    /** The timer that runs for something. */
    public Optional<Timer> of(String about) {
        return timers.stream().filter(timer -> timer.about().equals(about)).findFirst();
    }

    public boolean rings(Timer timer) {
        return !timer.ends().toInstant().isAfter(now);
    }

    /** Whether chilled food has been out too long by now. */
    public boolean isOver(OffsetDateTime back) {
        return !back.toInstant().isAfter(now);
    }

    /** "10:55". */
    public String clock(OffsetDateTime time) {
        return "%tR".formatted(time.atZoneSameInstant(zone));
    }

    /** What is left, "1:59:58", or "0:00". */
    public String left(Timer timer) {
        Duration left = Duration.between(now, timer.ends());
        if (left.isNegative()) {
            return "0:00";
        }
        return left.toHours() > 0
                ? "%d:%02d:%02d".formatted(left.toHours(), left.toMinutesPart(), left.toSecondsPart())
                : "%d:%02d".formatted(left.toMinutes(), left.toSecondsPart());
    }

    /** A name for a place on the page that stays the same. */
    public static String id(Timer timer) {
        return "timer-" + Integer.toHexString(timer.about().hashCode());
    }
}
