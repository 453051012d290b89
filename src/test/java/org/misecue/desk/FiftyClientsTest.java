package org.misecue.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.misecue.desk.check.CheckClient;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;
import org.misecue.episode.Ticks;

/** Fifty at once, each with a connection of their own: nobody is turned away, and nothing that was confirmed is lost. */
class FiftyClientsTest extends OverSample {

    private static final int CLIENTS = 50;
    private static final String BOWLS = "/e/sample-project/bowls";

    /** What each of them does; all begin at the same moment. */
    private <T> List<T> atOnce(IntFunction<Callable<T>> what) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(CLIENTS);
        try {
            CountDownLatch begin = new CountDownLatch(1);
            List<Future<T>> outcomes = IntStream.range(0, CLIENTS)
                    .mapToObj(number -> {
                        Callable<T> job = what.apply(number);
                        return people.submit(() -> {
                            begin.await();
                            return job.call();
                        });
                    })
                    .toList();
            begin.countDown();
            List<T> all = new ArrayList<>();
            for (Future<T> outcome : outcomes) {
                all.add(outcome.get());
            }
            return all;
        } finally {
            people.shutdownNow();
        }
    }

    private OpenDesk client() {
        return desk.stranger().enter();
    }

    @Test
    void every_tick_is_kept() throws Exception {
        List<String> keys = desk.tickable(BOWLS);
        assertThat(keys).hasSizeGreaterThan(20);

        List<Integer> answers = atOnce(number -> {
            OpenDesk client = client();
            return () -> client.post(
                            BOWLS + "/tick", Map.of("key", keys.get(number % keys.size())), "HX-Request", "true")
                    .statusCode();
        });

        assertThat(answers).containsOnly(200);
        assertThat(new Ticks(Episode.open(folder)).read()).containsExactlyInAnyOrderElementsOf(keys);
    }

    @Test
    void one_of_them_decides_and_the_others_see_that_it_changed() throws Exception {
        Map<String, String> form = CheckClient.form(
                CheckClient.row(new CheckClient(desk, folder).page("check"), "175 g unsalted butter"), "keep");

        List<HttpResponse<String>> answers = atOnce(number -> {
            CheckClient client = new CheckClient(client(), folder);
            Map<String, String> own = new HashMap<>(form);
            own.put("by", "person " + number);
            return () -> client.decide(own);
        });

        List<Integer> took = IntStream.range(0, CLIENTS)
                .filter(number -> answers.get(number).statusCode() == 200)
                .boxed()
                .toList();
        assertThat(took).hasSize(1);
        assertThat(answers)
                .filteredOn(answer -> answer.statusCode() != 200)
                .allSatisfy(answer -> assertThat(answer.statusCode()).isEqualTo(409));
        assertThat(new Decisions(Episode.open(folder)).read()).singleElement().satisfies(one -> assertThat(one.who())
                .isEqualTo("person " + took.get(0)));
    }

    @Test
    void each_gets_its_own_part_of_the_film() throws Exception {
        Path film = folder.resolve("footage/take-1.mp4");
        byte[] whole = Files.readAllBytes(film);
        int part = whole.length / CLIENTS;

        List<byte[]> parts = atOnce(number -> {
            OpenDesk client = client();
            String range = "bytes=" + number * part + "-" + ((number + 1) * part - 1);
            return () -> bytes(client, "/e/sample-project/media/take-1.mp4", range);
        });

        for (int number = 0; number < CLIENTS; number++) {
            assertThat(parts.get(number)).isEqualTo(Arrays.copyOfRange(whole, number * part, (number + 1) * part));
        }
    }

    private static byte[] bytes(OpenDesk client, String path, String range) throws IOException, InterruptedException {
        return client.client()
                .send(client.request(path, "Range", range).build(), BodyHandlers.ofByteArray())
                .body();
    }
}
