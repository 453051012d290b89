package org.misecue.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;

/** The desk in a process of its own, killed while somebody decides: what the page confirmed is there afterwards. */
class KilledDeskTest {

    private static final Pattern SEEN =
            Pattern.compile("name=\"about\" value=\"([^\"]+)\"/>\\s*<input[^>]* name=\"seen\" value=\"([^\"]+)\"");
    private static final int CONFIRMED = 25;

    @TempDir
    Path temp;

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    @Test
    void loses_no_decision_that_the_page_confirmed() throws Exception {
        Path folder = OpenDesk.sample(temp);
        Files.delete(folder.resolve("footage/take-1.mp4")); // it need not be read for this
        Map<String, String> confirmed = new LinkedHashMap<>();
        try (DeskProcess desk = DeskProcess.over(folder)) {
            String origin = desk.origin();
            get(desk.address());
            Map<String, String> marks = marks(get(origin + "/e/sample-project/check/sheet"));
            while (marks.isEmpty()) { // the film's first reading
                Thread.sleep(200);
                marks = marks(get(origin + "/e/sample-project/check/sheet"));
            }
            decideUntilKilled(desk, origin, marks, confirmed);
        }
        assertThat(confirmed).isNotEmpty();
        Map<String, String> kept = new Decisions(Episode.open(folder))
                .read().stream().collect(Collectors.toMap(Decision::about, Decision::note));
        confirmed.forEach((about, note) -> assertThat(Integer.parseInt(kept.getOrDefault(about, "-1")))
                .as(about)
                .isGreaterThanOrEqualTo(Integer.parseInt(note)));
        try (var state = Files.list(folder.resolve(".misecue"))) {
            assertThat(state.map(file -> file.getFileName().toString())).contains("decisions.yaml");
        }
    }

    /** One decision after the other, each with its number as its note; the kill comes in the middle of one. */
    private void decideUntilKilled(
            DeskProcess desk, String origin, Map<String, String> marks, Map<String, String> confirmed)
            throws InterruptedException {
        Map<String, String> now = new LinkedHashMap<>(marks);
        List<String> abouts = List.copyOf(marks.keySet());
        for (int number = 0; ; number++) {
            String about = abouts.get(number % abouts.size());
            if (number == CONFIRMED) {
                CompletableFuture.runAsync(desk::kill);
            }
            try {
                HttpResponse<String> answer = post(origin, about, now.getOrDefault(about, ""), String.valueOf(number));
                assertThat(answer.statusCode()).isEqualTo(200);
                confirmed.put(about, String.valueOf(number));
                now.putAll(marks(answer.body()));
            } catch (IOException killed) {
                desk.process().waitFor();
                return;
            }
        }
    }

    private static Map<String, String> marks(String page) {
        Map<String, String> marks = new LinkedHashMap<>();
        Matcher seen = SEEN.matcher(page);
        while (seen.find()) {
            marks.put(seen.group(1), seen.group(2));
        }
        return marks;
    }

    private String get(String address) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address))
                .header("HX-Request", "true")
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString()).body();
    }

    private HttpResponse<String> post(String origin, String about, String seen, String note)
            throws IOException, InterruptedException {
        String form = "about=" + URLEncoder.encode(about, UTF_8) + "&seen=" + seen + "&choice=keep&note=" + note;
        HttpRequest request = HttpRequest.newBuilder(URI.create(origin + "/e/sample-project/check/decide"))
                .header("Origin", origin)
                .header("HX-Request", "true")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }
}
