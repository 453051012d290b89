package org.misecue.desk.check;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Correction;
import org.misecue.episode.Corrections;
import org.misecue.worktop.ByEar;
import org.misecue.worktop.Stretch;
import org.misecue.worktop.Worktop;

/** Takes down what is really said where the recogniser wrote something else. */
final class Hearing implements Station {

    private final Clock clock;

    Hearing(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/check/words", request -> words(request, counter.episode(request)));
        server.post("/e/{episode}/check/heard", request -> heard(request, counter.episode(request)));
        server.post("/e/{episode}/check/as-written", request -> asWritten(request, counter.episode(request)));
    }

    /** The words around any moment, to be corrected. */
    private void words(Context request, OpenEpisode episode) {
        String source = Fields.asked(request, "source");
        String at = Fields.asked(request, "at");
        Stretch stretch = byEar(request, episode.ready()).around(source, time(at));
        if (stretch.words().isEmpty()) {
            throw new Refusal(404, "Nothing is said at " + at + " in " + source + "; try a moment before or after.");
        }
        Answer.piece(request, "desk/check/words.jte", Map.of("episode", episode, "id", "any", "stretch", stretch));
    }

    private void heard(Context request, OpenEpisode episode) {
        Worktop worktop = episode.ready();
        Stretch seen = Stretch.seen(
                Fields.text(request, "source"), time(Fields.text(request, "at")), Fields.text(request, "was"));
        if (!byEar(request, worktop).correct(seen, Fields.text(request, "heard"))) {
            throw new Refusal(
                    400, "That is what is written already; put what you hear in the place of what was misheard.");
        }
        sheet(request, episode, "Corrected. The verdicts go by what was heard now.");
    }

    private static void asWritten(Context request, OpenEpisode episode) {
        Corrections corrections = new Corrections(episode.worktop().episode());
        String source = Fields.text(request, "source");
        Duration at = time(Fields.text(request, "at"));
        Correction meant = corrections.read().stream()
                .filter(one -> one.narration().equals(source)
                        && one.mend().at().equals(at)
                        && one.mend().was().equals(Fields.text(request, "was")))
                .findFirst()
                .orElseThrow(() -> new Refusal(409, "This was taken back, or corrected otherwise, meanwhile."));
        corrections.takeBack(meant);
        sheet(request, episode, "Taken back. The verdicts go by what the recogniser wrote again.");
    }

    /** Everything anew: each word can change any verdict. */
    private static void sheet(Context request, OpenEpisode episode, String told) {
        if (!Answer.isPiece(request)) {
            request.redirect(episode.path("check"), HttpStatus.SEE_OTHER);
            return;
        }
        episode.filmRead()
                .ifPresentOrElse(
                        worktop -> Answer.piece(
                                request,
                                "desk/check/sheet.jte",
                                Map.of("episode", episode, "sheet", CheckSheet.of(worktop), "told", told)),
                        () -> Answer.piece(
                                request,
                                "desk/waiting.jte",
                                Map.of("episode", episode, "again", episode.path("check/sheet"))));
    }

    private ByEar byEar(Context request, Worktop worktop) {
        return new ByEar(worktop, Fields.by(request), LocalDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES));
    }

    private static Duration time(String clock) {
        return org.misecue.narration.Clock.parse(clock)
                .orElseThrow(() -> new Refusal(400, "Expected a time such as 3:20, not “" + clock + "”."));
    }
}
