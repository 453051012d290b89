package org.misecue.desk.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.desk.KitchenClock;
import org.misecue.desk.OpenDesk;

/** A filming day from morning to evening, one desk after another over the same folder; planning is what takes its time. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class DayPageTest {

    private static final String DAY = "/e/oats/day";
    private static final Map<String, String> NOTHING = Map.of();

    @TempDir
    static Path temp;

    private static final KitchenClock CLOCK = KitchenClock.at("2026-05-04T09:00");
    private static Path folder;
    private static OpenDesk desk;

    @BeforeAll
    static void a_desk_is_open() {
        folder = OatSquares.in(temp, "first-shot: 2026-05-04 10:00\n");
        desk = OpenDesk.at(CLOCK, folder).enter();
    }

    @AfterAll
    static void and_closed() {
        desk.close();
    }

    @BeforeEach
    void planning_is_over() throws InterruptedException {
        for (int i = 0; i < 600 && page().contains("class=\"waiting\""); i++) {
            Thread.sleep(100);
        }
    }

    private static String page() {
        return desk.get(DAY).body();
    }

    private static Path kept(String file) {
        return folder.resolve(".misecue").resolve(file);
    }

    /** The key that the form of a row sends. */
    private static String key(int row) {
        Matcher key =
                Pattern.compile("name=\"key\" value=\"(" + row + " [^\"]*)\"").matcher(page());
        assertThat(key.find()).isTrue();
        return key.group(1);
    }

    private static HttpResponse<String> done(int row) {
        return desk.post(DAY + "/done", Map.of("key", key(row)));
    }

    private static boolean isDone(int row) {
        return Pattern.compile("id=\"row-" + row + "\" class=\"done")
                .matcher(page())
                .find();
    }

    @Test
    @Order(1)
    void the_plan_is_made_once_and_shown_to_all_who_come() throws IOException {
        byte[] plan = Files.readAllBytes(kept("day.json"));
        assertThat(page()).contains("The day drawn", "It is <time id=\"now\">09:00</time>", "the day ends at 12:29");
        try (OpenDesk other = OpenDesk.at(CLOCK, folder).enter()) {
            assertThat(other.get(DAY).body()).contains("the day ends at 12:29").doesNotContain("class=\"waiting\"");
        }
        assertThat(Files.readAllBytes(kept("day.json"))).isEqualTo(plan);
    }

    @Test
    @Order(2)
    void what_is_done_is_kept_and_can_be_taken_back() throws IOException {
        CLOCK.set("2026-05-04T10:12");
        HttpResponse<String> answer = done(1);
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location").orElseThrow()).contains("last=1+Opening");
        assertThat(Files.readString(kept("done.yaml"))).contains("- \"1 Opening: kitchen\"");
        assertThat(isDone(1)).isTrue();
        done(2);
        desk.post(DAY + "/undone", Map.of("key", key(2)));
        assertThat(isDone(2)).isFalse();
        assertThat(isDone(1)).isTrue();
    }

    @Test
    @Order(3)
    void a_row_that_is_another_meanwhile_is_not_ticked() {
        HttpResponse<String> answer = desk.post(DAY + "/done", Map.of("key", "3 Opening: something else"));
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("the plan is another one meanwhile");
        assertThat(desk.post(DAY + "/done", NOTHING).statusCode()).isEqualTo(409);
    }

    @Test
    @Order(4)
    void late_is_said_and_what_is_left_is_planned_anew() throws InterruptedException {
        CLOCK.set("2026-05-04T10:40");
        done(2);
        assertThat(page()).contains("By what is ticked the day is 13 min late.", "id=\"overdue-3\"");
        HttpResponse<String> answer = desk.post(DAY + "/rest", NOTHING, "HX-Request", "true");
        assertThat(answer.body()).contains("id=\"hours\"");
        planning_is_over();
        assertThat(page())
                .contains("The day ends 20 min later than first planned, at 12:49 instead of 12:29", "not 10:20")
                .contains("id=\"current-3\"")
                .doesNotContain("min late.");
        assertThat(isDone(18)).as("weighing is over once the film has begun").isTrue();
    }

    @Test
    @Order(5)
    void a_wrong_tick_is_taken_back_and_the_day_planned_again() throws InterruptedException {
        desk.post(DAY + "/undone", Map.of("key", key(2)));
        desk.post(DAY + "/rest", NOTHING);
        planning_is_over();
        assertThat(isDone(2)).isFalse();
        assertThat(page()).contains("id=\"current-2\"");
    }

    @Test
    @Order(6)
    void the_recipe_may_change_and_nothing_that_was_ticked_is_lost_by_itself() throws IOException {
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("80 g", "90 g"));
        assertThat(page())
                .contains("The recipe or the settings changed after this was planned.", "Plan the whole day anew")
                .doesNotContain("class=\"waiting\"");
        assertThat(isDone(1)).isTrue();
    }

    @Test
    @Order(7)
    void an_oven_that_runs_gets_a_timer() throws IOException {
        desk.post(DAY + "/timer", Map.of("do", "start", "about", key(9)));
        assertThat(page()).contains("25:00", "rings at 11:05");
        assertThat(Files.readString(kept("timers.yaml"))).contains("ends: 2026-05-04T11:05:00Z");
        CLOCK.turn(Duration.ofMinutes(25));
        assertThat(page()).contains("Time is up: bakes at 180 °C");
    }

    @Test
    @Order(8)
    void on_another_day_nothing_is_now() {
        CLOCK.set("2026-05-06T10:40");
        assertThat(page())
                .contains("This is the plan for Monday 4 May 2026, and that is not today.")
                .contains("first-shot: 2026-05-06 10:00")
                .doesNotContain("Plan what is left anew", "id=\"current");
        assertThat(desk.post(DAY + "/rest", NOTHING).statusCode()).isEqualTo(409);
    }

    @Test
    @Order(9)
    void a_plan_that_is_damaged_is_said_in_a_sentence() throws IOException {
        Files.writeString(kept("day.json"), "{\"plan\": {\"title\": 3}}");
        HttpResponse<String> answer = desk.get(DAY);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("the kept plan is damaged; delete the file and plan the day anew.");
    }

    @Test
    void where_no_day_is_named_the_page_says_how_to_name_it() throws InterruptedException, IOException {
        Path undated = OatSquares.in(Files.createDirectories(temp.resolve("undated")), "takes: 1\n");
        try (OpenDesk other =
                OpenDesk.at(KitchenClock.at("2026-05-04T09:00"), undated).enter()) {
            String text = other.get(DAY).body();
            for (int i = 0; i < 600 && text.contains("class=\"waiting\""); i++) {
                Thread.sleep(100);
                text = other.get(DAY).body();
            }
            assertThat(text)
                    .contains("No day is named", "first-shot: 2026-05-04 10:00")
                    .doesNotContain("id=\"now\"");
        }
    }

    @Test
    void a_wish_that_cannot_be_met_is_told_and_not_tried_again_at_each_look() throws InterruptedException, IOException {
        Path tight = OatSquares.in(
                Files.createDirectories(temp.resolve("tight")), "first-shot: 2026-05-04 10:00\nday:\n  end: 10:30\n");
        try (OpenDesk other =
                OpenDesk.at(KitchenClock.at("2026-05-04T09:00"), tight).enter()) {
            String text = other.get(DAY).body();
            for (int i = 0; i < 600 && text.contains("class=\"waiting\""); i++) {
                Thread.sleep(100);
                text = other.get(DAY).body();
            }
            assertThat(text).contains("role=\"alert\"", "cannot be met").doesNotContain("class=\"waiting\"");
            assertThat(other.get(DAY).body()).contains("cannot be met").doesNotContain("class=\"waiting\"");
        }
    }
}
