package org.misecue.desk.media;

import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.Javalin;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Refusal;
import org.misecue.worktop.Moments;

/** Stills and clips: made when asked for, and served from {@code out/}. */
public final class CuttingBoard implements Station {

    private static final String FILM = "/e/{episode}/media/{film}";
    private static final int BAD_INPUT = 422;
    private static final Duration LONGEST = Duration.ofMinutes(10);
    private static final JsonMapper JSON = new JsonMapper();

    /** One cut at a time: more would only be slower each, and nobody can fill the machine with them. */
    private final Object knife = new Object();

    @Override
    public void open(Javalin server, Counter counter) {
        server.post(FILM + "/still", request -> still(request, counter));
        server.post(FILM + "/clip", request -> clip(request, counter));
        for (String folder : List.of("stills", "clips")) {
            String address = "/e/{episode}/made/" + folder + "/{file}";
            server.get(address, request -> Served.file(request, made(request, counter, folder)));
            server.head(address, request -> Served.file(request, made(request, counter, folder)));
        }
    }

    private static Path made(Context request, Counter counter, String folder) {
        return Inside.made(counter.episode(request).worktop().episode(), folder, request.pathParam("file"));
    }

    private void still(Context request, Counter counter) {
        Path film = Films.film(request, counter);
        Duration at = moment(request, "at");
        synchronized (knife) {
            OpenEpisode open = counter.episode(request);
            tell(request, open, new Moments(open.worktop()).still(film, at));
        }
    }

    private void clip(Context request, Counter counter) {
        Path film = Films.film(request, counter);
        Duration from = moment(request, "from");
        Duration to = moment(request, "to");
        if (to.minus(from).compareTo(LONGEST) > 0) {
            throw new Refusal(
                    BAD_INPUT,
                    "A clip lasts up to " + LONGEST.toMinutes() + " minutes; set the marks nearer to each other.");
        }
        synchronized (knife) {
            OpenEpisode open = counter.episode(request);
            tell(request, open, new Moments(open.worktop()).clip(film, from, to));
        }
    }

    /** Seconds on the film's clock. */
    private static Duration moment(Context request, String name) {
        String text = Fields.raw(request, name).strip();
        if (!text.matches("\\d{1,6}(\\.\\d{1,30})?")) {
            throw new Refusal(
                    BAD_INPUT, "“" + name + "” is a moment in seconds, such as 12.48; set the mark in the film again.");
        }
        return Duration.ofNanos(new BigDecimal(text).movePointRight(9).longValue());
    }

    private static void tell(Context request, OpenEpisode open, String name) {
        int slash = name.indexOf('/') + 1;
        String file = OpenEpisode.part(name.substring(slash));
        String address = open.path("made/" + name.substring(0, slash) + file);
        String made = JSON.createObjectNode()
                .put("src", address)
                .put("file", "out/" + name)
                .toString();
        request.status(201)
                .header("Location", address)
                .contentType("application/json")
                .result(made);
    }
}
