package org.misecue.desk.find;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Answers in the browser for the addresses under which films, stills and clips are given, and notes what was asked. */
final class StandInFilms {

    private final byte[] film;
    final List<String> taken = new ArrayList<>();

    /** Whether the browser is told that it cannot play the film. */
    boolean unplayable;

    private StandInFilms(byte[] film) {
        this.film = film;
    }

    static StandInFilms at(Page page, Path film) {
        try {
            StandInFilms films = new StandInFilms(Files.readAllBytes(film));
            page.route("**/media/*", films::give);
            page.route("**/media/*/*", films::answer);
            page.route("**/made/**", route -> route.fulfill(answer(200, "text/plain", "")));
            return films;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void give(Route route) {
        String[] range = route.request()
                .headers()
                .getOrDefault("range", "bytes=0-")
                .substring("bytes=".length())
                .split("-");
        int from = Integer.parseInt(range[0]);
        int to = range.length > 1 ? Integer.parseInt(range[1]) + 1 : film.length;
        route.fulfill(new Route.FulfillOptions()
                .setStatus(206)
                .setHeaders(Map.of(
                        "Content-Type", "video/mp4",
                        "Accept-Ranges", "bytes",
                        "Content-Range", "bytes %d-%d/%d".formatted(from, to - 1, film.length)))
                .setBodyBytes(Arrays.copyOfRange(film, from, to)));
    }

    private void answer(Route route) {
        String url = route.request().url();
        String what = url.substring(url.lastIndexOf('/') + 1);
        switch (what) {
            case "state" -> route.fulfill(json(200, state(url.substring(0, url.lastIndexOf('/')))));
            case "proxy" -> {
                unplayable = false;
                route.fulfill(json(202, "{\"src\":null,\"why\":\"\",\"making\":40,\"wrong\":\"\"}"));
            }
            default -> {
                taken.add(what + " " + route.request().postData());
                route.fulfill(json(201, "{\"src\":\"/e/x/made/%s\",\"file\":\"out/%ss/1\"}".formatted(what, what)));
            }
        }
    }

    private String state(String src) {
        return unplayable
                ? "{\"src\":null,\"why\":\"No browser plays this kind.\",\"making\":null,\"wrong\":\"\"}"
                : "{\"src\":\"%s\",\"why\":\"\",\"making\":null,\"wrong\":\"\"}".formatted(src);
    }

    private static Route.FulfillOptions json(int status, String body) {
        return answer(status, "application/json", body);
    }

    private static Route.FulfillOptions answer(int status, String type, String body) {
        return new Route.FulfillOptions().setStatus(status).setContentType(type).setBody(body);
    }
}
