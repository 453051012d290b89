package org.misecue.desk.timers;

import io.javalin.http.Context;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Timer;
import org.misecue.episode.Timers;

/** A touch on a button of the timers. What a timer is for and how long it runs comes from the plan, never from the page. */
public final class TimerTouch {

    /**
     * What a timer can be started for.
     *
     * @param about what it is kept under
     * @param what in a few words
     * @param lasts how long
     * @param out how long what came out of the fridge may stay out; empty where nothing did
     */
    public record Job(String about, String what, Duration lasts, Optional<Duration> out) {}

    private TimerTouch() {}

    /**
     * Starts, stops, or takes a stopping back, as the form's field "do" says.
     *
     * @param jobs finds what the form's field "about" means now
     * @throws Refusal if it means nothing any more
     */
    public static void on(Context request, OpenEpisode episode, Clock clock, Function<String, Optional<Job>> jobs) {
        Timers timers = new Timers(episode.worktop().episode());
        String about = Fields.raw(request, "about");
        OffsetDateTime now = OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS);
        switch (Fields.raw(request, "do")) {
            case "start" -> timers.start(started(jobs.apply(about), now));
            case "stop" -> timers.stop(about, now);
            case "go-on" -> timers.goOn(about);
            default -> throw new Refusal(400, "The desk does not understand this; load the page again.");
        }
    }

    private static Timer started(Optional<Job> known, OffsetDateTime now) {
        Job job = known.orElseThrow(() -> new Refusal(
                409, "No timer was started: what it was for has changed meanwhile; look at the page anew."));
        return new Timer(
                job.about(), job.what(), now, now.plus(job.lasts()), job.out().map(now::plus), Optional.empty());
    }
}
