package org.misecue.desk.check;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.View;
import org.misecue.worktop.Worktop;

/** Shows the verdicts, and follows the files. */
public final class CheckStation implements Station {

    private final Clock clock;

    /** @param clock for the times that stand on decisions */
    public CheckStation(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/check", request -> page(request, counter));
        server.get("/e/{episode}/check/sheet", request -> sheet(request, counter.episode(request)));
        new Deciding(clock).open(server, counter);
        new Hearing(clock).open(server, counter);
        new Lists(clock).open(server, counter);
    }

    private static void page(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        Answer.page(
                request,
                View.of(request, counter, episode, Tab.VERDICTS, "producer.js", "check.js"),
                "desk/check/page.jte",
                Map.of(
                        "episode", episode,
                        "sheet", episode.filmRead().map(CheckSheet::of),
                        "by", Fields.user()));
    }

    /**
     * What is new since the page was drawn: all of it where something else was found, single rows where something was decided,
     * nothing at all where the page shows it already.
     */
    private static void sheet(Context request, OpenEpisode episode) {
        Optional<Worktop> ready = episode.filmRead();
        if (ready.isEmpty()) {
            Answer.piece(request, "desk/waiting.jte", Map.of("episode", episode, "again", episode.path("check/sheet")));
            return;
        }
        CheckSheet sheet = CheckSheet.of(ready.get());
        if (!sheet.mark().equals(request.queryParam("drawn"))) {
            Answer.piece(request, "desk/check/sheet.jte", Map.of("episode", episode, "sheet", sheet));
            return;
        }
        List<CheckSheet.Row> changed = sheet.decidedOtherwise(request.queryParams("seen"));
        if (changed.isEmpty()) {
            request.status(HttpStatus.NO_CONTENT);
            return;
        }
        request.header("HX-Reswap", "none");
        Answer.piece(request, "desk/check/changed.jte", Map.of("episode", episode, "sheet", sheet, "rows", changed));
    }
}
