package org.misecue.desk.begin;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.desk.OpenDesk;
import org.misecue.episode.Episode;
import org.misecue.scale.Batch;

/** Episodes begin and grow over HTTP, as the script of the page does it. */
class BeginTest {

    private static final String RECIPE = """
            # Oat biscuits: the chewy ones

            Makes 12 biscuits

            - 100 g butter
            - 150 g oats

            1. Melt the butter.
            2. Stir in the oats and bake for 12 minutes at 180 °C.
            """;

    private static final String VTT = "WEBVTT\n\n00:01.000 --> 00:04.000\nA hundred grams of butter.\n";

    @TempDir
    Path temp;

    private OpenDesk desk;

    @BeforeEach
    void a_desk_is_open_over_an_empty_folder() {
        desk = OpenDesk.over(temp).enter();
    }

    @AfterEach
    void and_closed() {
        desk.close();
    }

    private static String named(String address, String name) {
        return address + "?name=" + URLEncoder.encode(name, UTF_8);
    }

    private HttpResponse<String> send(String method, String address, String body) {
        return send(method, address, HttpRequest.BodyPublishers.ofString(body));
    }

    private HttpResponse<String> send(String method, String address, HttpRequest.BodyPublisher body) {
        return desk.send(desk.request(address, "HX-Request", "true", "Origin", desk.origin())
                .method(method, body));
    }

    private HttpResponse<String> begin(String name, String text) {
        return send("POST", named("/new/recipe", name), text);
    }

    private HttpResponse<String> add(String name, String text) {
        return send("PUT", named("/e/oat-biscuits-the-chewy-ones/files", name), text);
    }

    private Path episode() {
        return temp.resolve("oat-biscuits-the-chewy-ones");
    }

    private List<String> lying(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void a_recipe_makes_an_episode_that_is_named_after_the_dish() {
        HttpResponse<String> answer = begin("oats.MD", RECIPE);
        assertThat(answer.body()).contains("/e/oat-biscuits-the-chewy-ones/recipe");
        assertThat(lying(temp)).containsExactly("oat-biscuits-the-chewy-ones");
        assertThat(lying(episode())).containsExactly("episode.yaml", "footage", "narration", "recipe.md");
        assertThat(Episode.open(episode()).settings().title()).contains("Oat biscuits: the chewy ones");
    }

    @Test
    void the_same_dish_once_more_lies_beside_the_first() {
        begin("oats.md", RECIPE);
        assertThat(begin("oats.md", RECIPE).body()).contains("/e/oat-biscuits-the-chewy-ones-2/recipe");
    }

    @ParameterizedTest
    @CsvSource({
        "oats.md, just a few words, 422, no ingredients were found",
        "oats.md, '', 415, the file is empty",
        "oats.docx, PK nothing, 422, oats.docx",
        "take.mp4, text, 415, holds something else",
        "oats.exe, MZ, 415, an episode is made of one recipe",
        "main.vtt, WEBVTT, 415, an episode begins with its recipe",
        "'', x, 415, has no name",
        "oats.txt, [0:01] hello, 415, begins with its recipe"
    })
    void what_is_no_recipe_makes_no_folder(String name, String text, int status, String sentence) {
        HttpResponse<String> answer = begin(name, text);
        assertThat(answer.body()).containsIgnoringCase(sentence);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(lying(temp)).isEmpty();
    }

    @Test
    void the_title_of_a_recipe_leads_nowhere_else() {
        begin("oats.md", RECIPE.replace("Oat biscuits: the chewy ones", "../../etc: con"));
        begin("oats.md", RECIPE.replace("Oat biscuits: the chewy ones", "Con"));
        begin("oats.md", RECIPE.replace("Oat biscuits: the chewy ones", "long ".repeat(80)));
        assertThat(lying(temp)).contains("etc-con", "file-con").hasSize(3).allMatch(name -> name.length() <= 60);
    }

    @Test
    void the_first_settings_are_confirmed_and_lead_to_the_bowls() {
        begin("oats.md", RECIPE);
        String address = "/e/oat-biscuits-the-chewy-ones/recipe";
        assertThat(desk.get(address).body())
                .contains("Oat biscuits: the chewy ones", "100 g", "oats", "Melt the butter");
        HttpResponse<String> answer = desk.post(
                address,
                Map.of("title", "The \"chewy\" ones\\", "size", "makes", "amount", "24 biscuits", "takes", "3"));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).contains("/e/oat-biscuits-the-chewy-ones/bowls");
        Episode made = Episode.open(episode());
        assertThat(made.settings().title()).contains("The \"chewy\" ones\\");
        assertThat(made.settings().batch()).isInstanceOf(Batch.Makes.class);
        assertThat(made.settings().sets().takes()).isEqualTo(3);
        assertThat(desk.get(address).body())
                .as("and may be confirmed again")
                .contains("value=\"24 biscuits\"", "The &#34;chewy&#34; ones\\");
    }

    @ParameterizedTest
    @CsvSource({
        "times, none, 1, a batch is from 0.01 to 100 times",
        "tin, big, 1, a tin is a size and a shape",
        "tin, 20 cm round, 1, tin",
        "have, 300 g saffron, 1, saffron",
        "makes, '', 1, a yield is a number",
        "upside-down, 1, 1, one of times",
        "'', '', 0, a number from 1 to 9",
        "'', '', many, a number from 1 to 9"
    })
    void a_batch_that_cannot_be_meant_is_asked_for_again(String size, String amount, String takes, String sentence)
            throws IOException {
        begin("oats.md", RECIPE);
        String before = Files.readString(episode().resolve("episode.yaml"));
        HttpResponse<String> answer = desk.post(
                "/e/oat-biscuits-the-chewy-ones/recipe",
                Map.of("title", "Oats", "size", size, "amount", amount, "takes", takes));
        assertThat(answer.body()).contains(sentence, "value=\"Oats\"");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(episode().resolve("episode.yaml")).hasContent(before);
    }

    @Test
    void settings_that_somebody_wrote_are_left_alone() throws IOException {
        begin("oats.md", RECIPE);
        Files.writeString(episode().resolve("episode.yaml"), "takes: 2\n");
        String address = "/e/oat-biscuits-the-chewy-ones/recipe";
        assertThat(desk.get(address).body()).doesNotContain("<form");
        assertThat(desk.post(address, Map.of("title", "x", "takes", "1")).body())
                .contains("changed by hand");
        assertThat(episode().resolve("episode.yaml")).hasContent("takes: 2\n");
    }

    @Test
    void narrations_and_films_go_where_they_belong() throws IOException {
        begin("oats.md", RECIPE);
        assertThat(add("main.vtt", VTT).statusCode()).isEqualTo(200);
        assertThat(add("talk.txt", "[0:01] a hundred grams of butter").statusCode())
                .isEqualTo(200);
        byte[] film = Files.readAllBytes(Path.of("sample-project/footage/take-1.mp4"));
        String address = named("/e/oat-biscuits-the-chewy-ones/files", "C:\\films\\take 1.MP4");
        assertThat(send("PUT", address, HttpRequest.BodyPublishers.ofByteArray(film))
                        .body())
                .contains("take 1.MP4");
        Episode made = Episode.open(episode());
        assertThat(made.narration()).hasSize(2);
        assertThat(made.footage()).hasSize(1);
        assertThat(made.footage().get(0)).hasBinaryContent(film);
        String page = desk.get("/e/oat-biscuits-the-chewy-ones/files").body();
        assertThat(page).contains("narration/main.vtt", "1 cue", "footage/take 1.MP4", "8:01, 640 × 360", "2.1 MB");
    }

    @ParameterizedTest
    @CsvSource({
        "main.vtt, not a word with a time, 422, no cue with words",
        "take.mp4, plain words, 415, holds something else",
        "oats.txt, 100 g butter, 409, 'has its recipe, recipe.md'",
        "notes.xyz, x, 415, none of them",
        "...mp4, x, 415, none of them",
        "..%2f..%2fmain.vtt, 'WEBVTT', 422, %2f..%2fmain.vtt"
    })
    void what_cannot_be_used_is_not_kept(String name, String text, int status, String sentence) {
        begin("oats.md", RECIPE);
        HttpResponse<String> answer = add(name, text);
        assertThat(answer.body()).contains(sentence);
        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(lying(episode().resolve("narration"))).isEmpty();
        assertThat(lying(episode().resolve("footage"))).isEmpty();
        assertThat(lying(episode())).hasSize(4);
    }

    @Test
    void a_film_that_breaks_off_is_called_by_its_own_name() throws IOException {
        begin("oats.md", RECIPE);
        byte[] film = Files.readAllBytes(Path.of("sample-project/footage/take-1.mp4"));
        HttpResponse<String> answer = send(
                "PUT",
                named("/e/oat-biscuits-the-chewy-ones/files", "take.mp4"),
                HttpRequest.BodyPublishers.ofByteArray(film, 0, film.length / 2));
        assertThat(answer.body()).contains("take.mp4: the film breaks off").doesNotContain(".part-");
        assertThat(lying(episode().resolve("footage"))).isEmpty();
    }

    @Test
    void a_second_file_of_a_name_is_refused_before_it_is_sent_and_when_it_is() {
        begin("oats.md", RECIPE);
        add("main.vtt", VTT);
        String look = named("/e/oat-biscuits-the-chewy-ones/files/look", "Main.VTT") + "&size=60";
        assertThat(send("POST", look, VTT).body())
                .contains("NARRATION", "\"taken\":\"yes\"", "add this one under another name");
        assertThat(add("Main.VTT", VTT).statusCode()).isEqualTo(409);
        assertThat(lying(episode().resolve("narration"))).containsExactly("main.vtt");
    }

    @Test
    void a_look_tells_what_is_too_large() {
        String look = named("/new/look", "main.srt") + "&size=" + (21L << 20);
        assertThat(send("POST", look, "1\n00:00:01,000 --> 00:00:02,000\nhi").body())
                .contains("a narration has at most 20 MB");
        assertThat(send("POST", named("/new/look", "a.mp4"), "x".repeat(70_000)).statusCode())
                .isEqualTo(413);
        assertThat(send(
                                "POST",
                                named("/new/look", "take.mp4") + "&size=9".repeat(1) + "9".repeat(17),
                                "\0\0\0\0ftypmp42")
                        .body())
                .contains("this disk takes films of at most");
    }

    /** Twenty megabytes are announced, or just keep coming. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void more_than_a_narration_may_have_is_refused(boolean announced) {
        begin("oats.md", RECIPE);
        byte[] much = new byte[(20 << 20) + 1];
        HttpRequest.BodyPublisher body = announced
                ? HttpRequest.BodyPublishers.ofByteArray(much)
                : HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(much));
        int status;
        try {
            status = send("PUT", named("/e/oat-biscuits-the-chewy-ones/files", "main.vtt"), body)
                    .statusCode();
        } catch (UncheckedIOException hungUp) {
            status = 413; // whoever is still sending sees the line cut
        }
        assertThat(status).isEqualTo(413);
        assertThat(lying(episode().resolve("narration"))).isEmpty();
        assertThat(desk.get("/e/oat-biscuits-the-chewy-ones/pulse").statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_link_in_the_place_of_a_folder_is_not_followed() throws IOException {
        begin("oats.md", RECIPE);
        Path elsewhere = Files.createDirectory(temp.resolve("elsewhere"));
        Files.delete(episode().resolve("narration"));
        Files.createSymbolicLink(episode().resolve("narration"), elsewhere);
        assertThat(add("main.vtt", VTT).body()).contains("narration/ is a link to another place");
        assertThat(lying(elsewhere)).isEmpty();
    }

    @Test
    void only_the_owner_adds_anything_and_only_from_the_desks_own_pages() {
        begin("oats.md", RECIPE);
        String address = named("/e/oat-biscuits-the-chewy-ones/files", "main.vtt");
        HttpRequest.BodyPublisher body = HttpRequest.BodyPublishers.ofString(VTT);
        OpenDesk stranger = desk.stranger();
        assertThat(stranger.send(stranger.request(address, "Origin", desk.origin())
                                .PUT(body))
                        .statusCode())
                .isEqualTo(403);
        assertThat(desk.send(desk.request(address, "Origin", "http://buns.example")
                                .PUT(body))
                        .statusCode())
                .isEqualTo(403);
        assertThat(desk.send(desk.request(address).PUT(body)).statusCode()).isEqualTo(403);
        assertThat(lying(episode().resolve("narration"))).isEmpty();
    }

    @Test
    void the_sample_is_copied_once_and_opened_again() throws IOException {
        assertThat(desk.post("/new/sample", Map.of()).headers().firstValue("Location"))
                .contains("/e/sample-plum-cake/bowls");
        for (String file : Sample.FILES) {
            assertThat(temp.resolve("sample-plum-cake").resolve(file))
                    .hasSameBinaryContentAs(Path.of("sample-project").resolve(file));
        }
        Files.writeString(temp.resolve("sample-plum-cake/recipe.md"), RECIPE);
        assertThat(desk.post("/new/sample", Map.of()).statusCode()).isEqualTo(303);
        assertThat(temp.resolve("sample-plum-cake/recipe.md")).hasContent(RECIPE);
        assertThat(lying(temp)).containsExactly("sample-plum-cake");
    }

    @Test
    void the_sample_goes_beside_a_folder_that_has_its_name() throws IOException {
        Files.createDirectories(temp.resolve("sample-plum-cake/mine"));
        assertThat(desk.post("/new/sample", Map.of()).headers().firstValue("Location"))
                .contains("/e/sample-plum-cake-2/bowls");
    }

    @Test
    void the_program_comes_with_the_whole_sample() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("sample-project"))) {
            assertThat(files.filter(Files::isRegularFile)
                            .map(file ->
                                    Path.of("sample-project").relativize(file).toString())
                            .filter(name -> !name.startsWith("out") && !name.startsWith(".misecue")))
                    .containsExactlyInAnyOrderElementsOf(Sample.FILES);
        }
        for (String file : Sample.FILES) {
            try (InputStream in = Sample.open(file)) {
                assertThat(in.read()).isNotNegative();
            }
        }
    }

    @Test
    void a_desk_over_one_episode_begins_no_other() {
        begin("oats.md", RECIPE);
        try (OpenDesk one = OpenDesk.over(episode()).enter()) {
            assertThat(one.get("/new").body()).contains("open the desk over the folder above");
            assertThat(one.post("/new/sample", Map.of()).statusCode()).isEqualTo(404);
            assertThat(one.get("/e/oat-biscuits-the-chewy-ones/files").statusCode())
                    .isEqualTo(200);
        }
        assertThat(lying(episode())).hasSize(4);
    }

    @Test
    void an_episode_that_lost_its_recipe_takes_another() throws IOException {
        begin("oats.md", RECIPE);
        Files.delete(episode().resolve("recipe.md"));
        assertThat(desk.get("/e/oat-biscuits-the-chewy-ones/files").body()).contains("there is no recipe");
        assertThat(add("new oats.md", RECIPE).statusCode()).isEqualTo(200);
        assertThat(lying(episode())).contains("new oats.md");
    }

    @Test
    void files_that_were_put_there_by_hand_are_told_with_what_is_wrong() throws IOException {
        begin("oats.md", RECIPE);
        Files.writeString(episode().resolve("narration/main.vtt"), "nothing");
        Files.writeString(episode().resolve("narration/notes.doc"), "nothing");
        Files.writeString(episode().resolve("footage/take.mp4"), "nothing");
        assertThat(desk.get("/e/oat-biscuits-the-chewy-ones/files").body())
                .contains(
                        "narration/main.vtt: no cue with words",
                        "narration/notes.doc: this is not a narration",
                        "footage/take.mp4: this is not a film that can be read",
                        "A narration: without one no word leads to a moment.");
    }
}
