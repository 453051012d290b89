package org.misecue.desk.check;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.decide.DocketText;
import org.misecue.decide.Matter;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.worktop.Worktop;

/** Takes decisions and takes them back, each only on what was seen. */
final class Deciding implements Station {

    private static final String UNDO = "undo";

    private final Clock clock;

    Deciding(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.post("/e/{episode}/check/decide", request -> decide(request, counter.episode(request)));
    }

    private void decide(Context request, OpenEpisode episode) {
        Worktop worktop = episode.ready();
        Matter matter = matter(worktop, Fields.text(request, "about"));
        String choice = Fields.text(request, "choice");
        boolean undo = choice.equals(UNDO);
        List<Decision> taken = undo ? List.of() : List.of(decision(request, matter, choice));
        String seen = Fields.text(request, "seen");
        String told = "";
        try {
            new Decisions(worktop.episode())
                    .change(taken, undo ? List.of(matter.about()) : List.of(), before -> look(before, matter, seen));
        } catch (Meanwhile other) {
            request.status(HttpStatus.CONFLICT);
            told = other.sentence;
        }
        answer(request, episode, CheckSheet.of(worktop), matter.about(), told);
    }

    private static Matter matter(Worktop worktop, String about) {
        return worktop.docket().matters().stream()
                .filter(one -> one.about().equals(about))
                .findFirst()
                .orElseThrow(
                        () -> new Refusal(
                                409,
                                "“" + about
                                        + "” is not to be decided any more: what is written or said has changed. Nothing was taken down."));
    }

    private Decision decision(Context request, Matter matter, String choice) {
        Choice chosen = Choice.of(choice)
                .orElseThrow(() -> new Refusal(400, "A decision is keep, fix, pickup or cover; load the page again."));
        LocalDateTime now = LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
        return matter.decided(chosen, Fields.by(request), now, Fields.text(request, "note"));
    }

    /** While nobody else can change the file. */
    private static void look(List<Decision> before, Matter matter, String seen) {
        Optional<Decision> now = before.stream()
                .filter(one -> one.about().equals(matter.about()))
                .findFirst();
        if (!matter.seen(now).toString().equals(seen)) {
            boolean sameFound = seen.startsWith(matter.seen(now).found() + ".");
            throw new Meanwhile(sentence(matter.about(), sameFound, now));
        }
    }

    private static String sentence(String about, boolean sameFound, Optional<Decision> now) {
        String what = !sameFound
                ? "what is written, said or shown has changed since you looked"
                : now.map(one -> "meanwhile it was decided: " + DocketText.words(one))
                        .orElse("meanwhile its decision was taken back");
        return "“" + about + "” – " + what + ". Nothing was overwritten; look, and decide again if you still want to.";
    }

    /** Somebody else was quicker. */
    private static final class Meanwhile extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final String sentence;

        Meanwhile(String sentence) {
            super(sentence, null, false, false);
            this.sentence = sentence;
        }
    }

    /** The row anew with the counts, or the whole page for a browser without script. */
    private static void answer(Context request, OpenEpisode episode, CheckSheet sheet, String about, String told) {
        if (Answer.isPiece(request)) {
            Answer.piece(
                    request,
                    "desk/check/answer.jte",
                    Map.of("episode", episode, "sheet", sheet, "row", sheet.row(about), "sentence", told));
        } else if (told.isEmpty()) {
            request.redirect(episode.path("check#" + sheet.row(about).id()), HttpStatus.SEE_OTHER);
        } else {
            Answer.sentence(request, HttpStatus.CONFLICT.getCode(), told);
        }
    }
}
