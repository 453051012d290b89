package org.misecue.desk.bowls;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.KitchenClock;
import org.misecue.desk.OpenDesk;

/** The bowls, as a browser without script meets them. */
class BowlsPageTest {

    private static final String BOWLS = "/e/sample-project/bowls";
    private static final String PLUMS =
            "bowl: ripe plums, roasted plums, step 1 (2 ×): 500 g ripe plums, halved and stoned";
    private static final String BUTTER = "job: Take the butter out of the fridge, 2 h, for bowl 5, step 4";

    @TempDir
    Path temp;

    private final KitchenClock clock = KitchenClock.at("2026-05-04T08:55");
    private Path folder;
    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open() {
        folder = OpenDesk.sample(temp);
        desk = OpenDesk.at(clock, folder).enter();
    }

    @AfterEach
    void and_closed() {
        desk.close();
    }

    private String page() {
        return desk.get(BOWLS).body();
    }

    private HttpResponse<String> post(String what, Map<String, String> form) {
        return desk.post(BOWLS + "/" + what, form);
    }

    private String kept(String file) throws IOException {
        return Files.readString(folder.resolve(".misecue").resolve(file));
    }

    private void rewrite(String what, String with) throws IOException {
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace(what, with));
    }

    @Test
    void a_tick_is_kept_at_once_where_the_command_keeps_it_and_can_be_undone() throws IOException {
        HttpResponse<String> answer = post("tick", Map.of("key", PLUMS, "id", "bowl-1", "left", "1"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location").orElseThrow())
                .startsWith(BOWLS + "?left=1&last=bowl")
                .endsWith("#bowl-1");
        assertThat(kept("ticks.yaml")).contains("- \"" + PLUMS + "\"");
        post("untick", Map.of("key", PLUMS, "id", "bowl-1"));
        assertThat(kept("ticks.yaml")).doesNotContain("plums");
    }

    @Test
    void what_is_left_is_counted_and_weighed_for_all_takes() {
        // From the recipe, by hand: a batch of 1988 g twice, and 372 g of spares, as misecue prep says.
        assertThat(page()).contains("16 bowls, 7 jobs and 3 besides left", "4.35 kg to weigh");
        post("tick", Map.of("key", PLUMS, "id", "bowl-1"));
        assertThat(page()).contains("15 bowls, 7 jobs and 3 besides left", "3.35 kg to weigh");
    }

    @Test
    void a_tick_on_an_amount_that_changed_meanwhile_is_refused_and_the_fresh_bowl_shown() throws IOException {
        rewrite("500 g ripe plums", "650 g ripe plums");
        for (String what : new String[] {"tick", "untick"}) {
            HttpResponse<String> answer = post(what, Map.of("key", PLUMS, "id", "bowl-1"));
            assertThat(answer.statusCode()).isEqualTo(409);
            assertThat(answer.body())
                    .contains("Bowl 1 changed meanwhile", "650 g</strong>")
                    .doesNotContain("500 g</");
        }
        assertThat(folder.resolve(".misecue/ticks.yaml")).doesNotExist();
    }

    @Test
    void a_tick_on_what_is_gone_or_never_was_is_refused() throws IOException {
        rewrite("- 1 tbsp sesame seeds, toasted\n", "");
        assertThat(post("tick", Map.of("key", "bowl: sesame seeds", "id", "bowl-16"))
                        .body())
                .contains("That is not on the list any more");
        assertThat(post("tick", Map.of()).statusCode()).isEqualTo(409);
        assertThat(post("tick", Map.of("key", "<script>", "id", "<script>")).body())
                .doesNotContain("<script>");
    }

    @Test
    void a_recipe_that_is_broken_meanwhile_is_said_in_a_sentence() throws IOException {
        Files.writeString(folder.resolve("episode.yaml"), "taks: 2\n");
        HttpResponse<String> answer = desk.get(BOWLS);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("episode.yaml:1:1").doesNotContain("Exception");
    }

    @Test
    void only_what_is_left_is_shown_where_that_was_wished() {
        post("tick", Map.of("key", PLUMS, "id", "bowl-1"));
        assertThat(page()).contains("id=\"bowl-1\"", "Untick");
        assertThat(desk.get(BOWLS + "?left=1").body())
                .doesNotContain("id=\"bowl-1\"")
                .contains("id=\"bowl-2\"");
    }

    @Test
    void a_timer_is_kept_at_once_and_outlives_the_desk() throws IOException {
        post("timer", Map.of("do", "start", "about", BUTTER));
        assertThat(kept("timers.yaml")).contains("ends: 2026-05-04T10:55:00Z", "back: 2026-05-04T10:55:00Z");
        clock.turn(Duration.ofMinutes(30));
        post("timer", Map.of("do", "start", "about", BUTTER));
        assertThat(page()).as("a second touch does not begin it again").contains("1:30:00", "rings at 10:55");
        // Nothing of it is in the memory of the first desk, which might as well have been killed.
        try (OpenDesk other = OpenDesk.at(clock, folder).enter()) {
            assertThat(other.get(BOWLS).body())
                    .contains("1:30:00", "Out since 08:55", "the 2-hour rule of the US Department of Agriculture");
        }
        clock.turn(Duration.ofMinutes(91));
        assertThat(page()).contains("Time is up: Take the butter out of the fridge", "That time is over.");
    }

    @Test
    void a_timer_is_stopped_and_goes_on_when_that_was_wrong() throws IOException {
        post("timer", Map.of("do", "start", "about", BUTTER));
        post("timer", Map.of("do", "stop", "about", BUTTER));
        assertThat(page())
                .contains("Stopped: Take the butter out", "Let it go on")
                .doesNotContain("role=\"timer\"");
        clock.turn(Duration.ofMinutes(2));
        post("timer", Map.of("do", "go-on", "about", BUTTER));
        assertThat(page()).contains("1:58:00");
        post("timer", Map.of("do", "stop", "about", BUTTER));
        clock.turn(Duration.ofMinutes(11));
        assertThat(page()).doesNotContain("Let it go on");
    }

    @Test
    void a_timer_runs_only_for_what_is_on_the_list() throws IOException {
        assertThat(post("timer", Map.of("do", "start", "about", "job: nothing")).statusCode())
                .isEqualTo(409);
        assertThat(post("timer", Map.of("do", "dance", "about", BUTTER)).statusCode())
                .isEqualTo(400);
        Files.createDirectories(folder.resolve(".misecue"));
        Files.writeString(folder.resolve(".misecue/timers.yaml"), "- about: x\n  what: y\n  started: noon\n");
        assertThat(desk.get(BOWLS).body()).contains(".misecue/timers.yaml:3:12");
    }

    @Test
    void every_change_is_told_to_other_devices() throws IOException {
        String before = desk.get("/e/sample-project/pulse").body();
        post("timer", Map.of("do", "start", "about", BUTTER));
        String then = desk.get("/e/sample-project/pulse").body();
        post("tick", Map.of("key", PLUMS, "id", "bowl-1"));
        assertThat(then)
                .isNotEqualTo(before)
                .isNotEqualTo(desk.get("/e/sample-project/pulse").body());
    }

    @Test
    void a_guest_weighs_ticks_and_times_and_sees_nothing_else() {
        try (OpenDesk guest = desk.stranger()) {
            assertThat(guest.get(BOWLS).statusCode()).isEqualTo(403);
            assertThat(guest.post(BOWLS + "/tick", Map.of("key", PLUMS)).statusCode())
                    .isEqualTo(403);
            guest.post("/join", Map.of("code", desk.codes.get(desk.codes.size() - 1)));
            assertThat(guest.get(BOWLS).body())
                    .contains("/bowls\"", "/day\"")
                    .doesNotContain("/find\"", "/check\"", "/text\"", "href=\"/\"");
            assertThat(guest.post(BOWLS + "/tick", Map.of("key", PLUMS)).statusCode())
                    .isEqualTo(303);
            assertThat(guest.post(BOWLS + "/timer", Map.of("do", "start", "about", BUTTER))
                            .statusCode())
                    .isEqualTo(303);
        }
    }
}
