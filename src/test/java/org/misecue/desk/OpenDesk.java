package org.misecue.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Assumptions;
import org.misecue.shown.LanguageData;

/** A desk that a test opened, and a client that has its key. */
public final class OpenDesk implements AutoCloseable {

    private final String address;
    private final Optional<Desk> own;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    /** The codes for guests that were told. */
    public final List<String> codes = new ArrayList<>();

    private OpenDesk(Path folder, boolean lan, boolean reads) {
        this(folder, lan, reads, Clock.systemDefaultZone());
    }

    private OpenDesk(Path folder, boolean lan, boolean reads, Clock clock) {
        Desk desk = Desk.open(new DeskSettings(
                folder.toAbsolutePath(),
                0,
                lan,
                codes::add,
                Optional.empty(),
                () -> reads ? LanguageData.find(System.getenv()) : Optional.empty(),
                clock));
        this.address = desk.address();
        this.own = Optional.of(desk);
    }

    private OpenDesk(String address) {
        this.address = address;
        this.own = Optional.empty();
    }

    /** A client of a desk that somebody else opened, without a key yet. */
    public static OpenDesk elsewhere(String address) {
        return new OpenDesk(address);
    }

    /** Another client of the same desk, without a key. */
    public OpenDesk stranger() {
        return new OpenDesk(address);
    }

    /** Over this folder; pictures are not read. */
    public static OpenDesk over(Path folder) {
        return new OpenDesk(folder, false, false);
    }

    /** Over this folder, guests may come, and the clock on the wall is this one. */
    public static OpenDesk at(Clock clock, Path folder) {
        return new OpenDesk(folder, true, false, clock);
    }

    /** Over this folder; what films show is read. Without the language data for that the test is skipped, and says so. */
    public static OpenDesk reading(Path folder) {
        if (!Boolean.getBoolean("misecue.require.ocr")) {
            Assumptions.assumeTrue(
                    LanguageData.find(System.getenv()).isPresent(),
                    "skipped: Tesseract's language data is not installed (Debian: tesseract-ocr-eng)");
        }
        return new OpenDesk(folder, false, true);
    }

    /** Over this folder, and guests may come. */
    public static OpenDesk withGuests(Path folder) {
        return new OpenDesk(folder, true, false);
    }

    /** A copy of the sample episode that a test may change. */
    public static Path sample(Path temp) {
        return copy(Path.of("sample-project"), temp.resolve("sample-project"));
    }

    public static Path copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Path name = from.relativize(file);
                if (name.startsWith("out") || name.startsWith(".misecue")) {
                    continue;
                }
                Path target = to.resolve(name);
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
            return to;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public int port() {
        return URI.create(address).getPort();
    }

    /** With the key. */
    public String address() {
        return address;
    }

    public String origin() {
        return "http://127.0.0.1:" + port();
    }

    /** This client has come in with the key. */
    public OpenDesk enter() {
        get(address.substring(origin().length()));
        return this;
    }

    public HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    /** As a form of one of the desk's own pages. */
    public HttpResponse<String> post(String path, Map<String, String> form, String... headers) {
        return send(form(path, form, headers));
    }

    /** The same, to be sent as it is. */
    public HttpRequest.Builder form(String path, Map<String, String> form, String... headers) {
        String body = form.entrySet().stream()
                .map(one -> URLEncoder.encode(one.getKey(), UTF_8) + "=" + URLEncoder.encode(one.getValue(), UTF_8))
                .collect(Collectors.joining("&"));
        return request(path, headers)
                .header("Origin", origin())
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body));
    }

    /** Under what everything on a page of bowls can be ticked. */
    public List<String> tickable(String page) {
        return Jsoup.parse(get(page).body())
                .select("form[action$=/tick] input[name=key]")
                .eachAttr("value");
    }

    /** To be sent as it is. */
    public HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin() + path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return request;
    }

    public HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    public HttpClient client() {
        return client;
    }

    @Override
    public void close() {
        own.ifPresent(Desk::close);
    }
}
