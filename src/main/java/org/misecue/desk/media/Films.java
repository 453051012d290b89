package org.misecue.desk.media;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Episode;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Track;
import org.misecue.notice.BadInput;
import org.misecue.worktop.Proxies;

/** The camera's films, and the smaller copies of those that browsers do not play. */
public final class Films implements Station {

    private static final String FILM = "/e/{episode}/media/{film}";
    private static final JsonMapper JSON = new JsonMapper();

    private final Proxies proxies = new Proxies();
    private final Oven oven = new Oven(proxies);
    private final Shelf shelf = new Shelf();

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/media", request -> list(request, counter.episode(request)));
        server.get(FILM, request -> Served.file(request, film(request, counter)));
        server.head(FILM, request -> Served.file(request, film(request, counter)));
        server.get(FILM + "/state", request -> tell(request, counter.episode(request), film(request, counter)));
        server.get(FILM + "/proxy", request -> Served.file(request, proxy(request, counter)));
        server.head(FILM + "/proxy", request -> Served.file(request, proxy(request, counter)));
        server.post(FILM + "/proxy", request -> begin(request, counter));
        server.delete(FILM + "/proxy", request -> stop(request, counter));
        server.unsafeConfig().events.serverStopping(oven::close);
    }

    private static Episode episode(OpenEpisode open) {
        return open.worktop().episode();
    }

    static Path film(Context request, Counter counter) {
        return Inside.film(episode(counter.episode(request)), request.pathParam("film"));
    }

    private Path proxy(Context request, Counter counter) {
        return proxies.kept(episode(counter.episode(request)), film(request, counter))
                .orElseThrow(() -> new Refusal(404, "There is no copy of this film yet; ask for one first."));
    }

    private void begin(Context request, Counter counter) throws IOException {
        OpenEpisode open = counter.episode(request);
        Path film = film(request, counter);
        if (proxies.kept(episode(open), film).isEmpty()) {
            oven.begin(episode(open), film, shelf.label(film).info().length());
            request.status(202);
        }
        tell(request, open, film);
    }

    private void stop(Context request, Counter counter) {
        Path film = film(request, counter);
        oven.stop(film);
        tell(request, counter.episode(request), film);
    }

    private void list(Context request, OpenEpisode open) {
        ObjectNode all = JSON.createObjectNode();
        ArrayNode films = all.putArray("films");
        episode(open).footage().forEach(film -> films.add(state(open, film)));
        request.contentType("application/json").result(all.toString());
    }

    private void tell(Context request, OpenEpisode open, Path film) {
        request.contentType("application/json").result(state(open, film).toString());
    }

    private ObjectNode state(OpenEpisode open, Path film) {
        String name = String.valueOf(film.getFileName());
        String address = open.film(name);
        ObjectNode state = JSON.createObjectNode().put("film", name);
        try {
            Inside.film(episode(open), name);
            Shelf.Label label = shelf.label(film);
            boolean copied = proxies.kept(episode(open), film).isPresent();
            Optional<String> plain = label.objection().isEmpty() ? Optional.of(address) : Optional.empty();
            state.put("src", copied ? address + "/proxy" : plain.orElse(null));
            state.put("why", label.objection().map(Films::why).orElse(""));
            state.put("making", oven.percent(film).orElse(null));
            state.put("wrong", oven.wrong(film));
            about(state, label.info());
        } catch (BadInput | Refusal e) {
            nothing(state, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            nothing(state, "This film cannot be read any more; load the page again.");
        }
        return state;
    }

    private static String why(String objection) {
        return "Browsers do not play this film as it is, because " + objection + ".";
    }

    private static void about(ObjectNode state, FilmInfo info) {
        state.put("seconds", info.length().toMillis() / 1000.0);
        Optional<Track.Picture> picture = info.picture();
        if (picture.isEmpty()) {
            state.putNull("picture");
        } else {
            state.putObject("picture")
                    .put("width", picture.get().width())
                    .put("height", picture.get().height())
                    .put("rate", picture.get().rate().toString());
        }
    }

    private static void nothing(ObjectNode state, String wrong) {
        state.putNull("src").put("why", "").putNull("making").put("wrong", wrong);
        state.put("seconds", 0).putNull("picture");
    }
}
