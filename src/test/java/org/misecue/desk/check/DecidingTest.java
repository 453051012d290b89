package org.misecue.desk.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.desk.check.CheckClient.form;
import static org.misecue.desk.check.CheckClient.row;

import java.awt.Font;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.misecue.bench.CardFilm;
import org.misecue.bench.CardTruth;
import org.misecue.desk.OpenDesk;
import org.misecue.desk.OverSample;
import org.misecue.episode.Choice;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.episode.Episode;

/** Decisions that come in as forms. */
class DecidingTest extends OverSample {

    private static final String BUTTER = "175 g unsalted butter";

    private CheckClient client;

    @BeforeEach
    void a_client_asks() {
        client = new CheckClient(desk, folder);
    }

    private Element butter() {
        return row(client.page("check"), BUTTER);
    }

    private List<Decision> decisions() {
        return new Decisions(Episode.open(folder)).read();
    }

    private static Document answer(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        return Jsoup.parse(response.body());
    }

    @Test
    void what_differs_comes_first_and_the_deciding_words_are_marked() {
        Document page = client.page("check");
        assertThat(page.select("#sheet h2").eachText())
                .containsExactly(
                        "Differs from the recipe (1)",
                        "Added on camera, not in the recipe (1)",
                        "Listen, look and decide (4)",
                        "Never said or shown with an amount: the description must have it (4)",
                        "Said or shown as written (19)",
                        "Corrected by ear (0)");
        assertThat(page.select("details.verdicts > summary").eachText())
                .containsExactly("Said or shown as written (19)");
        assertThat(page.select("#count").text()).isEqualTo("6 of 6 undecided.");
        Element butter = row(page, BUTTER);
        assertThat(butter.select("mark").text()).isEqualTo("two hundred grams");
        assertThat(butter.select("button.play").attr("data-film")).isEqualTo("/e/sample-project/media/take-1.mp4");
        assertThat(butter.select("button.play").text()).isEqualTo("▶ 3:20 m");
    }

    @Test
    void a_decision_is_kept_with_name_and_note_and_only_its_row_and_the_count_come_back() {
        Map<String, String> form = form(butter(), "pickup");
        form.put("note", "said from memory");
        Document answer = answer(client.decide(form), 200);
        assertThat(answer.select("article")).hasSize(1);
        assertThat(answer.select(".standing").text()).startsWith("Decided: film a pick-up (Nell, ");
        assertThat(answer.select("#count").text()).isEqualTo("5 of 6 undecided, 1 to be done.");
        assertThat(decisions()).singleElement().satisfies(one -> {
            assertThat(one.about()).isEqualTo("cake: unsalted butter");
            assertThat(one.choice()).isEqualTo(Choice.PICKUP);
            assertThat(one.who()).isEqualTo("Nell");
            assertThat(one.note()).isEqualTo("said from memory");
            assertThat(one.restsOn()).contains("written: 175 g");
        });
        assertThat(client.get("check/pickups.txt").body()).contains("175");
    }

    @Test
    void a_decision_is_taken_back() {
        client.decide(form(butter(), "keep"));
        Document answer = answer(client.decide(form(butter(), "undo")), 200);
        assertThat(answer.select("#count").text()).isEqualTo("6 of 6 undecided.");
        assertThat(decisions()).isEmpty();
    }

    @Test
    void whoever_comes_second_overwrites_nothing_and_is_told_who_decided_what_and_when() {
        Map<String, String> seenByBoth = form(butter(), "keep");
        seenByBoth.put("note", "it works with more");
        client.decide(seenByBoth);
        seenByBoth.put("choice", "fix");
        seenByBoth.put("by", "Otto");
        Document answer = answer(client.decide(seenByBoth), 409);
        assertThat(answer.select("#said").text())
                .matches("“cake: unsalted butter” – meanwhile it was decided: keep as filmed \\(Nell, "
                        + "\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d: it works with more\\)\\. Nothing was overwritten; look, and decide"
                        + " again if you still want to\\.");
        assertThat(answer.select("article .decide > p").text()).startsWith("Decided: keep as filmed");
        assertThat(decisions()).extracting(Decision::who).containsExactly("Nell");
        answer(client.decide(form(Jsoup.parse(answer.outerHtml()).selectFirst("article"), "fix")), 200);
    }

    @Test
    void of_many_at_once_one_decides() {
        Map<String, String> form = form(butter(), "keep");
        List<Integer> statuses = IntStream.range(0, 8)
                .parallel()
                .mapToObj(i -> client.decide(new java.util.HashMap<>(Map.of(
                                "about",
                                form.get("about"),
                                "seen",
                                form.get("seen"),
                                "choice",
                                "keep",
                                "by",
                                "Nell " + i)))
                        .statusCode())
                .sorted()
                .toList();
        assertThat(statuses).containsExactly(200, 409, 409, 409, 409, 409, 409, 409);
    }

    @Test
    void what_was_not_seen_is_not_decided_on() throws IOException {
        Map<String, String> form = form(butter(), "keep");
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("175 g unsalted", "185 g unsalted"));
        client.page("check");
        Document answer = answer(client.decide(form), 409);
        assertThat(answer.select("#said").text())
                .contains("what is written, said or shown has changed since you looked");
        assertThat(answer.select("article h3").text()).startsWith("185 g");
        assertThat(decisions()).isEmpty();
    }

    @Test
    void a_decision_whose_grounds_have_changed_is_to_be_taken_again() throws IOException {
        client.decide(form(butter(), "keep"));
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("175 g unsalted", "185 g unsalted"));
        Element row = row(client.page("check"), "185 g unsalted butter");
        assertThat(row.select(".standing").text())
                .startsWith("To decide: decided before it changed: decide again; it was: keep as filmed (Nell");
    }

    @Test
    void what_does_not_differ_any_more_is_refused_with_a_sentence() throws IOException {
        Map<String, String> form = form(butter(), "keep");
        Path recipe = folder.resolve("recipe.md");
        Files.writeString(recipe, Files.readString(recipe).replace("175 g unsalted", "200 g unsalted"));
        client.page("check");
        assertThat(answer(client.decide(form), 409).text())
                .contains("“cake: unsalted butter” is not to be decided any more");
    }

    @Test
    void a_page_that_shows_everything_gets_nothing_and_another_one_the_changed_row() {
        Document page = client.page("check");
        StringBuilder follow =
                new StringBuilder(page.selectFirst("#sheet").attr("hx-get").substring("/e/sample-project/".length()));
        page.select("[name=seen]").forEach(seen -> follow.append("&seen=").append(seen.attr("value")));
        assertThat(client.piece(follow.toString()).statusCode()).isEqualTo(204);
        client.decide(form(butter(), "keep"));
        HttpResponse<String> changed = client.piece(follow.toString());
        assertThat(changed.headers().firstValue("HX-Reswap")).contains("none");
        Document answer = answer(changed, 200);
        assertThat(answer.select("article").eachAttr("hx-swap-oob")).containsExactly("true");
        assertThat(answer.select("article h3").text()).startsWith(BUTTER);
        assertThat(answer.select("#count").text()).startsWith("5 of 6 undecided");
    }

    @Test
    void nonsense_is_refused_with_a_sentence() {
        Map<String, String> form = form(butter(), "perhaps");
        assertThat(answer(client.decide(form), 400).text()).contains("A decision is keep, fix, pickup or cover");
        form.put("choice", "keep");
        form.put("note", "x".repeat(3000));
        assertThat(answer(client.decide(form), 400).text()).contains("That is too long for “note”");
        assertThat(answer(client.decide(Map.of()), 409).text()).contains("is not to be decided");
        assertThat(decisions()).isEmpty();
    }

    @Test
    void a_damaged_list_of_decisions_is_told_with_its_line_and_not_written_over() throws IOException {
        Map<String, String> form = form(butter(), "keep");
        Path file = folder.resolve(".misecue/decisions.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "- {about: \"cake: butter\", decision: perhaps}\n");
        assertThat(answer(client.decide(form), 422).text()).contains(".misecue/decisions.yaml:1:");
        assertThat(Files.readString(file)).contains("perhaps");
    }

    @Test
    void it_is_for_the_owner_alone() {
        try (OpenDesk stranger = desk.stranger()) {
            CheckClient other = new CheckClient(stranger, folder);
            assertThat(other.get("check").statusCode()).isEqualTo(403);
            assertThat(other.decide(Map.of("about", "cake: unsalted butter", "choice", "keep"))
                            .statusCode())
                    .isEqualTo(403);
            assertThat(other.post("check/heard", Map.of()).statusCode()).isEqualTo(403);
            assertThat(other.get("text").statusCode()).isEqualTo(403);
            assertThat(other.post("text/publish", Map.of()).statusCode()).isEqualTo(403);
        }
    }

    @Test
    void markup_in_titles_quotes_and_notes_is_shown_as_text() throws IOException {
        String markup = "<script>alert(1)</script>";
        Path nasty = Files.createDirectories(temp.resolve("nasty"));
        Files.createDirectories(nasty.resolve("narration"));
        Files.writeString(nasty.resolve("episode.yaml"), "title: \"" + markup + "\"\n");
        Files.writeString(
                nasty.resolve("recipe.md"),
                "# Buns\n\n- 150 g plain flour, \\<img src=x onerror=alert(1)\\>\n- 2 eggs\n\n1. Whisk all.\n");
        Files.writeString(
                nasty.resolve("narration/main.txt"),
                "[0:02] now " + markup + " one thirty grams of plain flour \"'onload=\n[0:08] and two eggs\n");
        try (OpenDesk other = OpenDesk.over(nasty).enter()) {
            CheckClient its = new CheckClient(other, nasty);
            Document page = its.page("check");
            Map<String, String> form = form(row(page, "150 g plain flour"), "keep");
            form.put("note", markup);
            form.put("by", "\"><b>Nell");
            Document answer = answer(its.decide(form), 200);
            assertThat(answer.select(".standing").text()).contains(markup).contains("\"><b>Nell");
            form.put("choice", "fix");
            Document refused = answer(its.decide(form), 409);
            for (Document one : List.of(page, answer, refused, its.page("check"), its.page("text"))) {
                assertThat(one.select("main script, body > script, article script, #said script, main img, main b"))
                        .isEmpty();
                assertThat(one.select("[onerror], [onload]")).isEmpty();
            }
            assertThat(page.title()).contains(markup);
        }
    }

    @Test
    void what_a_film_shows_is_a_row_with_its_moment() throws IOException {
        Path buns = temp.resolve("buns");
        Files.createDirectories(buns.resolve("narration"));
        Files.createDirectories(buns.resolve("footage"));
        Files.writeString(
                buns.resolve("recipe.md"), "# Buns\n\n- 500 g plain flour\n- 80 g caster sugar\n\n1. Mix all.\n");
        Files.writeString(buns.resolve("narration/main.txt"), "[0:01] eighty grams of caster sugar\n");
        CardTruth card = new CardTruth(
                List.of("90 g caster sugar"),
                new Font("Dialog", Font.PLAIN, 20),
                CardTruth.Look.LIGHT_ON_BOX,
                0.075,
                false,
                0.1,
                0.6,
                Duration.ofSeconds(2),
                Duration.ofSeconds(4));
        new CardFilm("main", 640, 360, 25, 0.12, CardFilm.Picture.QUIET, 5, Duration.ofSeconds(5), List.of(card))
                .write(buns.resolve("footage/main.mp4"));
        try (OpenDesk reading = OpenDesk.reading(buns).enter()) {
            Element sugar = row(new CheckClient(reading, buns).page("check"), "80 g caster sugar");
            assertThat(sugar.text()).contains("Shown as 90 g; 80 g is written.");
            Element shown = sugar.select(".moment").last();
            assertThat(shown.text()).contains("on screen").contains("“90 g caster sugar”");
            assertThat(Double.parseDouble(shown.select("button.play").attr("data-at")))
                    .isBetween(1.5, 2.5);
            assertThat(shown.select("textarea")).isEmpty();
        }
    }
}
