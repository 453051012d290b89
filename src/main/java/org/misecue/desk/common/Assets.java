package org.misecue.desk.common;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Refusal;
import org.misecue.desk.door.Who;

/** Stylesheet and scripts: ours, and the one library; nothing comes from outside. */
public final class Assets implements Station {

    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js";
    private static final Map<String, String> TYPES =
            Map.of("css", "text/css; charset=utf-8", "js", "text/javascript; charset=utf-8", "svg", "image/svg+xml");

    private final Map<String, byte[]> known = new ConcurrentHashMap<>();

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/assets/{file}", this::serve, Who.PASSER_BY);
    }

    private void serve(Context request) {
        String file = request.pathParam("file");
        if (!file.matches("[a-z-]+\\.(css|js|svg)")) {
            throw new Refusal(404, "There is nothing at this address.");
        }
        byte[] bytes = known.computeIfAbsent(file, Assets::load);
        if (bytes.length == 0) {
            throw new Refusal(404, "There is nothing at this address.");
        }
        String type = TYPES.getOrDefault(file.substring(file.lastIndexOf('.') + 1), "text/plain");
        request.contentType(type).header("Cache-Control", "no-cache").result(bytes);
    }

    /** Empty for a file that is not there. */
    private static byte[] load(String file) {
        String resource = file.equals("htmx.js") ? HTMX : "/org/misecue/desk/assets/" + file;
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            return in == null ? new byte[0] : Objects.requireNonNull(in).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
