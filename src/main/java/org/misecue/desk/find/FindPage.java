package org.misecue.desk.find;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.util.HashMap;
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
import org.misecue.desk.door.Refusal;

/** The page on which an editor finds a moment of an episode and looks at it. */
public final class FindPage implements Station {

    private final Finder finder = new Finder();

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/find", request -> page(request, counter));
        server.get("/e/{episode}/find/moments", request -> moments(request, counter.episode(request)));
        server.get("/e/{episode}/find/cameras", request -> cameras(request, counter.episode(request)));
    }

    private void page(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        Rolls rolls = finder.rolls(episode);
        finder.warmUp(episode);
        Optional<Roll> roll = rolls.roll(Fields.asked(request, "of"))
                .or(() -> rolls.all().stream().findFirst());
        Map<String, Object> values = new HashMap<>();
        values.put("episode", episode);
        values.put("found", found(episode, Words.of(request)));
        values.put("rolls", rolls);
        values.put("roll", roll);
        values.put("strip", roll.map(one -> Strip.of(episode.worktop(), one)).orElseGet(() -> new Strip(List.of())));
        Answer.page(
                request,
                View.of(request, counter, episode, Tab.FIND, "player.js", "find.js"),
                "desk/find/page.jte",
                values);
    }

    private void moments(Context request, OpenEpisode episode) {
        Answer.piece(request, "desk/find/moments.jte", Map.of("found", found(episode, Words.of(request))));
    }

    /** Asked again while films are listened to. */
    private void cameras(Context request, OpenEpisode episode) {
        Film film = finder.rolls(episode)
                .roll(Fields.asked(request, "of"))
                .flatMap(Roll::film)
                .orElseThrow(() -> new Refusal(404, "There is no film of this name in footage/."));
        Map<String, Object> values = new HashMap<>();
        values.put("episode", episode);
        values.put("film", film);
        values.put("views", finder.projection(episode).beside(film));
        Answer.piece(request, "desk/find/cameras.jte", values);
    }

    private Found found(OpenEpisode episode, String words) {
        if (words.isEmpty()) {
            return Found.NOTHING_ASKED;
        }
        Rolls rolls = finder.rolls(episode);
        return Found.of(
                words, most -> finder.find(episode, words, most), hit -> FoundMoment.in(episode, rolls, hit, words));
    }
}
