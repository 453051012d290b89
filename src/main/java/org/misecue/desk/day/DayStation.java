package org.misecue.desk.day;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import java.net.URLEncoder;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.misecue.day.DayPlan;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.Turn;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;
import org.misecue.desk.door.Who;
import org.misecue.desk.timers.TimerBoard;
import org.misecue.desk.timers.TimerTouch;

/** The filming day: what is on now, what comes next, and what that means when it is late. */
public final class DayStation implements Station {

    private final Clock clock;
    private final Map<OpenEpisode, FilmDay> days = new ConcurrentHashMap<>();

    /** @param clock on the wall of the kitchen */
    public DayStation(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        String page = "/e/{episode}/" + Tab.DAY.path();
        server.get(page, request -> answer(request, counter, last(request)), Who.GUEST);
        server.post(page + "/done", request -> tick(request, counter, true), Who.GUEST);
        server.post(page + "/undone", request -> tick(request, counter, false), Who.GUEST);
        server.post(page + "/rest", request -> replan(request, counter), Who.GUEST);
        server.post(page + "/anew", request -> anew(request, counter), Who.GUEST);
        server.post(page + "/timer", request -> timer(request, counter), Who.GUEST);
    }

    private FilmDay day(OpenEpisode episode) {
        return days.computeIfAbsent(episode, FilmDay::new);
    }

    /** A form carries the rows that were seen, so that nobody ticks what a row has become meanwhile. */
    private void tick(Context request, Counter counter, boolean isDone) {
        FilmDay day = day(counter.episode(request));
        DayPlan plan = planned(day);
        List<String> keys = request.formParams("key");
        if (keys.isEmpty() || !FilmDay.keys(plan).containsAll(keys)) {
            throw new Refusal(409, "Nothing was changed: the plan is another one meanwhile; look at its rows anew.");
        }
        day.tick(plan, isDone ? keys : List.of(), isDone ? List.of() : keys);
        done(request, counter, isDone && keys.size() == 1 ? keys.get(0) : "");
    }

    private void replan(Context request, Counter counter) {
        FilmDay day = day(counter.episode(request));
        LocalDateTime now = board(counter.episode(request), planned(day), "")
                .now()
                .orElseThrow(() -> new Refusal(
                        409,
                        "What is left can be planned on the day itself; write the day in episode.yaml, for example "
                                + firstShot() + "."));
        day.replan(now);
        done(request, counter, "");
    }

    private void anew(Context request, Counter counter) {
        day(counter.episode(request)).plan();
        done(request, counter, "");
    }

    private void timer(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        DayPlan plan = planned(day(episode));
        TimerTouch.on(request, episode, clock, about -> job(plan, about));
        done(request, counter, last(request));
    }

    private static Optional<TimerTouch.Job> job(DayPlan plan, String about) {
        return plan.entries().stream()
                .filter(entry -> FilmDay.key(entry).equals(about))
                .map(entry -> new TimerTouch.Job(
                        about, entry.what(), Duration.between(entry.start(), entry.end()), Optional.empty()))
                .findFirst();
    }

    private static DayPlan planned(FilmDay day) {
        return day.look()
                .plan()
                .orElseThrow(() -> new Refusal(409, "The day is not planned yet; wait until its rows stand here."));
    }

    private void done(Context request, Counter counter, String last) {
        if (Answer.isPiece(request)) {
            answer(request, counter, last);
        } else {
            request.redirect(path(counter.episode(request)) + query(last), HttpStatus.SEE_OTHER);
        }
    }

    private void answer(Context request, Counter counter, String last) {
        long turn = Turn.next();
        OpenEpisode episode = counter.episode(request);
        FilmDay.State state = day(episode).look();
        Map<String, Object> values = Map.of(
                "state", state,
                "board", state.plan().map(plan -> board(episode, plan, last)),
                "path", path(episode),
                "query", query(last),
                "firstShot", firstShot(),
                "turn", turn,
                "answer", request.method() == HandlerType.POST);
        if (Answer.isPiece(request)) {
            Answer.piece(request, "desk/day/board.jte", values);
        } else {
            View view = View.of(request, counter, episode, Tab.DAY, "steady.js", "timers.js", "awake.js");
            Answer.page(request, view, "desk/day/page.jte", values);
        }
    }

    private DayBoard board(OpenEpisode episode, DayPlan plan, String last) {
        String path = path(episode);
        return new DayBoard(
                plan,
                day(episode).done(),
                LocalDateTime.now(clock),
                TimerBoard.of(episode, clock, path + "/timer"),
                last,
                path);
    }

    /** What to write for a day of filming today. */
    private String firstShot() {
        return "first-shot: " + LocalDateTime.now(clock).toLocalDate() + " 10:00";
    }

    private static String path(OpenEpisode episode) {
        return episode.path(Tab.DAY.path());
    }

    private static String last(Context request) {
        return Fields.sentOrAsked(request, "last");
    }

    private static String query(String last) {
        return last.isEmpty() ? "" : "?last=" + URLEncoder.encode(last, UTF_8);
    }
}
