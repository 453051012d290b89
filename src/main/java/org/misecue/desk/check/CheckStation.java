package org.misecue.desk.check;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.decide.DocketText;
import org.misecue.decide.Matter;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.worktop.ByEar;
import org.misecue.worktop.Worktop;

/** The producer's page. */
public final class CheckStation implements Station {

    private static final String UNDO = "undo";

    private final Clock clock;

    /** @param clock for the times that stand on decisions */
    public CheckStation(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/check", request -> page(request, counter));
        server.get("/e/{episode}/check/sheet", request -> sheet(request, counter.episode(request)));
        server.post("/e/{episode}/check/decide", request -> decide(request, counter.episode(request)));
        server.post("/e/{episode}/check/heard", request -> heard(request, counter.episode(request)));
    }

    private static void page(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        Optional<CheckSheet> sheet = episode.filmRead().map(CheckSheet::of);
        Answer.page(
                request,
                View.of(request, counter, episode, Tab.VERDICTS, "check.js"),
                "desk/check/page.jte",
                Map.of(
                        "episode",
                        episode,
                        "sheet",
                        sheet,
                        "filmed",
                        episode.worktop().filmed() || sheet.isEmpty(),
                        "by",
                        user()));
    }

    /** What the page shows below its head; until the films are read, what is being done. */
    private static void sheet(Context request, OpenEpisode episode) {
        Optional<Worktop> ready = episode.filmRead();
        if (ready.isPresent()) {
            Answer.piece(
                    request, "desk/check/sheet.jte", Map.of("episode", episode, "sheet", CheckSheet.of(ready.get())));
        } else {
            Answer.piece(request, "desk/waiting.jte", Map.of("episode", episode, "again", episode.path("check/sheet")));
        }
    }

    private void decide(Context request, OpenEpisode episode) {
        Worktop worktop = episode.worktop();
        String about = form(request, "about");
        Matter matter = worktop.docketAnew().matters().stream()
                .filter(one -> one.about().equals(about))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        409, "“" + about + "” is no longer a matter: what was written or said has changed."));
        String choice = form(request, "choice");
        List<Decision> taken = choice.equals(UNDO) ? List.of() : List.of(decision(request, matter, choice));
        List<String> undone = choice.equals(UNDO) ? List.of(about) : List.of();
        try {
            new Decisions(worktop.episode())
                    .change(taken, undone, before -> look(before, matter, form(request, "seen")));
        } catch (Seen changed) {
            request.status(HttpStatus.CONFLICT);
            row(request, episode, worktop, about, sentence(about, changed.now()));
            return;
        }
        row(request, episode, worktop, about, "");
    }

    private Decision decision(Context request, Matter matter, String choice) {
        Choice chosen = Choice.of(choice)
                .orElseThrow(() -> new Refusal(400, "A decision is keep, fix, pickup or cover; load the page again."));
        String by = form(request, "by").strip();
        return matter.decided(
                chosen, by.isEmpty() ? user() : by, now(), form(request, "note").strip());
    }

    /** What is there now is not what somebody saw who decides. */
    private static final class Seen extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Optional<Decision> now;

        Seen(Optional<Decision> now) {
            super("seen otherwise", null, false, false);
            this.now = now;
        }

        Optional<Decision> now() {
            return now;
        }
    }

    private static void look(List<Decision> before, Matter matter, String seen) {
        Optional<Decision> now = before.stream()
                .filter(one -> one.about().equals(matter.about()))
                .findFirst();
        if (!matter.mark(now).equals(seen)) {
            throw new Seen(now);
        }
    }

    private static String sentence(String about, Optional<Decision> now) {
        return "“" + about + "” has changed since this page was drawn"
                + now.map(one -> ": it was decided to " + DocketText.words(one)).orElse("")
                + ". Nothing was overwritten; look, and decide again if you still want to.";
    }

    /** The row anew with the counts, or the whole page for a browser without script. */
    private static void row(Context request, OpenEpisode episode, Worktop worktop, String about, String sentence) {
        if (!Answer.isPiece(request)) {
            if (sentence.isEmpty()) {
                request.redirect(episode.path("check"), HttpStatus.SEE_OTHER);
            } else {
                Answer.sentence(request, HttpStatus.CONFLICT.getCode(), sentence);
            }
            return;
        }
        CheckSheet sheet = CheckSheet.of(worktop);
        CheckSheet.Section only = sheet.only(about)
                .orElseThrow(() -> new Refusal(409, "“" + about + "” is no longer on the page; load it again."));
        Answer.piece(
                request,
                "desk/check/answer.jte",
                Map.of(
                        "episode", episode,
                        "sheet", sheet,
                        "kind", only.kind(),
                        "row", only.rows().get(0),
                        "sentence", sentence));
    }

    private void heard(Context request, OpenEpisode episode) {
        String by = form(request, "by").strip();
        ByEar byEar = new ByEar(episode.worktop(), by.isEmpty() ? user() : by, now());
        byEar.correctNear(
                form(request, "source"), seconds(form(request, "at")), form(request, "was"), form(request, "heard"));
        if (Answer.isPiece(request)) {
            sheet(request, episode);
        } else {
            request.redirect(episode.path("check"), HttpStatus.SEE_OTHER);
        }
    }

    private static Duration seconds(String text) {
        try {
            return Duration.ofMillis(Math.round(Double.parseDouble(text) * 1000));
        } catch (NumberFormatException e) {
            throw new Refusal(400, "A moment is told in seconds; load the page again.");
        }
    }

    private static String form(Context request, String name) {
        return Optional.ofNullable(request.formParam(name)).orElse("");
    }

    private LocalDateTime now() {
        return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
    }

    private static String user() {
        return System.getProperty("user.name", "");
    }
}
