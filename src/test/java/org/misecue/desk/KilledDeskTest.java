package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.desk.check.CheckClient;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;
import org.misecue.episode.Ticks;

/** The desk in a process of its own, killed while somebody works: what the page confirmed is there afterwards. */
class KilledDeskTest {

    private static final int CONFIRMED = 25;

    @TempDir
    Path temp;

    private Path sample() throws IOException {
        Path folder = OpenDesk.sample(temp);
        Files.delete(folder.resolve("footage/take-1.mp4")); // it need not be read for this
        return folder;
    }

    /** One thing after another; the kill comes in the middle of one, or so many milliseconds later. */
    private static void untilKilled(DeskProcess desk, int millis, IntConsumer next) throws InterruptedException {
        try {
            for (int number = 0; ; number++) {
                if (number == CONFIRMED) {
                    CompletableFuture.delayedExecutor(millis, TimeUnit.MILLISECONDS)
                            .execute(desk::kill);
                }
                next.accept(number);
            }
        } catch (UncheckedIOException killed) {
            desk.process().waitFor();
        }
    }

    @Test
    void loses_no_decision_that_the_page_confirmed() throws Exception {
        Path folder = sample();
        Map<String, Integer> confirmed = new HashMap<>();
        try (DeskProcess desk = DeskProcess.over(folder)) {
            CheckClient client =
                    new CheckClient(OpenDesk.elsewhere(desk.address()).enter(), folder);
            List<Element> rows = client.page("check").select("article.verdict:has(form.decide)");
            Map<String, Map<String, String>> forms = rows.stream()
                    .map(row -> CheckClient.form(row, "keep"))
                    .collect(Collectors.toMap(form -> form.get("about"), form -> form));
            List<String> abouts = List.copyOf(forms.keySet());
            untilKilled(desk, 0, number -> {
                String about = abouts.get(number % abouts.size());
                Map<String, String> form = forms.get(about);
                form.put("note", String.valueOf(number));
                HttpResponse<String> answer = client.decide(form);
                assertThat(answer.statusCode()).isEqualTo(200);
                confirmed.put(about, number);
                Document row = Jsoup.parse(answer.body());
                forms.put(about, CheckClient.form(row.selectFirst("article.verdict"), "keep"));
            });
        }
        assertThat(confirmed).isNotEmpty();
        Map<String, Integer> kept = new Decisions(Episode.open(folder))
                .read().stream().collect(Collectors.toMap(Decision::about, one -> Integer.valueOf(one.note())));
        confirmed.forEach((about, number) ->
                assertThat(kept.getOrDefault(about, -1)).as(about).isGreaterThanOrEqualTo(number));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 4, 9})
    void loses_no_tick_that_the_page_confirmed(int millis) throws Exception {
        Path folder = sample();
        Set<String> confirmed = new HashSet<>();
        String[] last = {""};
        try (DeskProcess desk = DeskProcess.over(folder)) {
            OpenDesk client = OpenDesk.elsewhere(desk.address()).enter();
            String page = "/e/sample-project/bowls";
            List<String> keys = client.tickable(page).subList(0, 9); // so that some are taken back again
            untilKilled(desk, millis, number -> {
                last[0] = keys.get(number * 7 % keys.size());
                boolean on = !confirmed.contains(last[0]);
                HttpResponse<String> answer =
                        client.post(page + (on ? "/tick" : "/untick"), Map.of("key", last[0]), "HX-Request", "true");
                assertThat(answer.statusCode()).isEqualTo(200);
                if (on) {
                    confirmed.add(last[0]);
                } else {
                    confirmed.remove(last[0]);
                }
            });
        }
        assertThat(last[0]).isNotEmpty();
        // Of the last one nobody was told how it ended.
        Set<String> kept = new HashSet<>(new Ticks(Episode.open(folder)).read());
        kept.remove(last[0]);
        confirmed.remove(last[0]);
        assertThat(kept).isEqualTo(confirmed);
    }
}
