package org.misecue.desk.bowls;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.Turn;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Who;
import org.misecue.desk.timers.TimerBoard;
import org.misecue.desk.timers.TimerTouch;
import org.misecue.episode.Ticks;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.RoomLimit;
import org.misecue.prep.TickList;
import org.misecue.prep.Wording;

/** The bowls: weighed one after another and ticked off. */
public final class BowlsStation implements Station {

    private final Clock clock;

    /** @param clock on the wall of the kitchen */
    public BowlsStation(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        String page = "/e/{episode}/" + Tab.BOWLS.path();
        server.get(page, request -> show(request, counter), Who.GUEST);
        server.post(page + "/tick", request -> tick(request, counter), Who.GUEST);
        server.post(page + "/untick", request -> untick(request, counter), Who.GUEST);
        server.post(page + "/timer", request -> timer(request, counter), Who.GUEST);
    }

    private void show(Context request, Counter counter) {
        answer(request, counter, tray(request, counter.episode(request), Look.of(request), Optional.empty()));
    }

    /** A form carries what its tick is kept under, so that nobody ticks an amount that was not seen. */
    private void tick(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        PrepPlan plan = plan(episode);
        String key = Fields.raw(request, "key");
        if (TickList.standing(plan).contains(key)) {
            change(episode, plan, List.of(key), List.of());
            done(request, counter, Look.of(request).withLast(key));
        } else {
            refuse(request, counter, plan, "not ticked");
        }
    }

    private void untick(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        PrepPlan plan = plan(episode);
        String key = Fields.raw(request, "key");
        if (TickList.standing(plan).contains(key)) {
            change(episode, plan, List.of(), List.of(key));
            done(request, counter, Look.of(request).withLast(""));
        } else {
            refuse(request, counter, plan, "left as it is");
        }
    }

    private void timer(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        PrepPlan plan = plan(episode);
        TimerTouch.on(request, episode, clock, about -> job(plan, about));
        done(request, counter, Look.of(request));
    }

    private static Optional<TimerTouch.Job> job(PrepPlan plan, String about) {
        return plan.jobs().stream()
                .filter(job -> TickList.key(job).equals(about))
                .map(job -> new TimerTouch.Job(
                        about, job.what(), job.before(), job.limit().map(RoomLimit::within)))
                .findFirst();
    }

    private static void change(OpenEpisode episode, PrepPlan plan, List<String> put, List<String> taken) {
        new Ticks(episode.worktop().episode()).change(put, taken, TickList.standing(plan));
    }

    private void refuse(Context request, Counter counter, PrepPlan plan, String outcome) {
        String id = Fields.raw(request, "id");
        String sentence = Line.all(plan).stream()
                .filter(line -> line.id().equals(id))
                .map(line -> "%s changed meanwhile and was %s; this is how it is now."
                        .formatted(Wording.upperFirst(line.words().replaceFirst(",.*", "")), outcome))
                .findFirst()
                .orElse("That is not on the list any more: the recipe changed meanwhile. Go on with what stands here.");
        request.status(HttpStatus.CONFLICT);
        Tray.Refused refused = new Tray.Refused(id, sentence);
        answer(request, counter, tray(request, counter.episode(request), Look.of(request), Optional.of(refused)));
    }

    private void done(Context request, Counter counter, Look look) {
        OpenEpisode episode = counter.episode(request);
        if (Answer.isPiece(request)) {
            answer(request, counter, tray(request, episode, look, Optional.empty()));
        } else {
            String place = Fields.raw(request, "id");
            String anchor = place.matches("[a-zA-Z]+-\\w+") ? "#" + place : "";
            request.redirect(path(episode) + look.query() + anchor, HttpStatus.SEE_OTHER);
        }
    }

    private Tray tray(Context request, OpenEpisode episode, Look look, Optional<Tray.Refused> refused) {
        long turn = Turn.next();
        String path = path(episode);
        return new Tray(
                plan(episode),
                TimerBoard.of(episode, clock, path + "/timer"),
                look,
                refused,
                path,
                LocalDateTime.now(clock),
                turn,
                request.method() == HandlerType.POST);
    }

    /** The plan is worked out once; the ticks on it are read for every answer. */
    private static PrepPlan plan(OpenEpisode episode) {
        return episode.worktop().prep().withTicks(new Ticks(episode.worktop().episode()).read());
    }

    private static void answer(Context request, Counter counter, Tray tray) {
        Map<String, Object> values = Map.of("tray", tray);
        if (Answer.isPiece(request)) {
            Answer.piece(request, "desk/bowls/list.jte", values);
        } else {
            View view = View.of(
                    request, counter, counter.episode(request), Tab.BOWLS, "steady.js", "timers.js", "awake.js");
            Answer.page(request, view, "desk/bowls/page.jte", values);
        }
    }

    private static String path(OpenEpisode episode) {
        return episode.path(Tab.BOWLS.path());
    }
}
