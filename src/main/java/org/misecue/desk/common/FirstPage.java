package org.misecue.desk.common;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Who;

/** The first page: the episode, or the episodes to choose from. */
public final class FirstPage implements Station {

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/", request -> show(request, counter), Who.GUEST);
        server.get("/e/{episode}", request -> first(request, counter.episode(request)), Who.GUEST);
    }

    private static void show(Context request, Counter counter) {
        List<String> names = counter.names();
        if (!counter.isArchive()) {
            first(request, counter.episode(names.get(0)));
            return;
        }
        if (names.isEmpty() && Who.of(request) == Who.OWNER) {
            request.redirect("/new", HttpStatus.SEE_OTHER);
            return;
        }
        Answer.page(
                request,
                View.of(request, "Episodes"),
                "desk/episodes.jte",
                Map.of("episodes", names, "owner", Who.of(request) == Who.OWNER));
    }

    private static void first(Context request, OpenEpisode episode) {
        Tab tab = Tab.of(Who.of(request)).get(0);
        request.redirect(episode.path(tab.path()), HttpStatus.SEE_OTHER);
    }
}
