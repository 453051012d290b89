package org.misecue.desk.media;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.footage.CameraFile;
import org.misecue.footage.Footage;

/** Proxies, stills and clips over HTTP. */
class FilmsTest {

    @TempDir
    Path temp;

    private FilmDesk films;

    @BeforeEach
    void a_desk_is_open() throws IOException {
        films = new FilmDesk(temp);
    }

    @AfterEach
    void and_closed() {
        films.close();
    }

    private String shoot(CameraFile kind) {
        return FilmDesk.MEDIA + kind.shoot(films.footage()).getFileName();
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        return new ObjectMapper().readTree(answer.body());
    }

    private JsonNode state(String film) throws IOException {
        return json(films.desk.get(film + "/state"));
    }

    private JsonNode whenMade(String film) throws IOException {
        JsonNode state = state(film);
        for (int i = 0; i < 600 && !state.get("making").isNull(); i++) {
            sleep();
            state = state(film);
        }
        return state;
    }

    private static void sleep() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void a_film_that_browsers_play_is_its_own_source() throws IOException {
        String film = shoot(CameraFile.H264_AAC_MP4);

        JsonNode state = json(films.desk.get("/e/buns/media")).get("films").get(0);

        assertThat(state).isEqualTo(state(film));
        assertThat(state).isEqualTo(new ObjectMapper().readTree("""
                {"film": "H264_AAC_MP4.mp4", "src": "/e/buns/media/H264_AAC_MP4.mp4", "why": "", "making": null,
                 "wrong": "", "seconds": %s, "picture": {"width": 160, "height": 96, "rate": "25"}}""".formatted(state.get("seconds"))));
        assertThat(state.get("seconds").asDouble()).isBetween(3.0, 3.2);
    }

    @Test
    void another_gets_a_copy_when_asked_and_keeps_it_until_the_film_changes() throws IOException {
        String film = shoot(CameraFile.PRORES_PCM_MOV);
        assertThat(state(film).get("src").isNull()).isTrue();
        assertThat(state(film).get("why").asText())
                .isEqualTo("Browsers do not play this film as it is, because its file is neither MP4 nor WebM.");
        assertThat(films.desk.get(film + "/proxy").statusCode()).isEqualTo(404);

        HttpResponse<String> begun = films.send("POST", film + "/proxy");
        assertThat(begun.statusCode()).isEqualTo(202);
        JsonNode made = whenMade(film);

        assertThat(made.get("src").asText()).isEqualTo(film + "/proxy");
        assertThat(films.bytes(film + "/proxy", "Range", "bytes=4-7").body())
                .asString()
                .isEqualTo("ftyp");
        assertThat(films.folder.resolve(".misecue/proxies/PRORES_PCM_MOV.mov.mp4"))
                .isRegularFile();
        assertThat(films.send("POST", film + "/proxy").statusCode()).isEqualTo(200);
        // The same name, another film.
        Files.move(
                CameraFile.H264_AAC_MOV.shoot(temp),
                films.footage().resolve("PRORES_PCM_MOV.mov"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThat(state(film).get("src").isNull()).isTrue();
        assertThat(films.desk.get(film + "/proxy").statusCode()).isEqualTo(404);
    }

    @Test
    void a_copy_from_an_earlier_day_is_found_again() throws IOException {
        String film = shoot(CameraFile.H264_AAC_MKV);
        films.send("POST", film + "/proxy");
        whenMade(film);
        films.close();

        films = new FilmDesk(temp);

        assertThat(state(film).get("src").asText()).isEqualTo(film + "/proxy");
    }

    @Test
    void what_a_killed_run_left_behind_is_thrown_away_and_what_is_being_written_stays() throws IOException {
        String film = shoot(CameraFile.H264_AAC_MKV);
        Path kept = Files.createDirectories(films.folder.resolve(".misecue/proxies"));
        Path left = Files.writeString(kept.resolve(".part-1-1-old.mp4"), "half");
        Files.setLastModifiedTime(left, FileTime.from(Instant.now().minusSeconds(4000)));
        Path writing = Files.writeString(kept.resolve(".part-2-1-new.mp4"), "half");

        films.send("POST", film + "/proxy");
        whenMade(film);

        assertThat(left).doesNotExist();
        assertThat(writing).exists();
    }

    @Test
    void whoever_stops_a_copy_or_closes_the_desk_leaves_nothing_half_made() throws IOException {
        String film = shoot(CameraFile.PRORES_PCM_MOV);
        String other = shoot(CameraFile.H264_AAC_MKV);
        films.send("POST", film + "/proxy");
        films.send("POST", other + "/proxy");

        JsonNode stopped = json(films.send("DELETE", film + "/proxy"));
        films.close();

        assertThat(stopped.get("making").isNull()).isTrue();
        Path kept = films.folder.resolve(".misecue/proxies");
        if (Files.isDirectory(kept)) {
            try (Stream<Path> files = Files.list(kept)) {
                assertThat(files)
                        .allMatch(file -> !file.getFileName().toString().startsWith("."));
            }
        }
    }

    @Test
    void a_film_that_cannot_be_used_says_why() throws IOException {
        Files.writeString(films.footage().resolve("broken.mp4"), "200 g flour");

        JsonNode state = state(FilmDesk.MEDIA + "broken.mp4");

        assertThat(state.get("src").isNull()).isTrue();
        assertThat(state.get("wrong").asText()).contains("broken.mp4: this is not a film that can be read");
        assertThat(films.send("POST", FilmDesk.MEDIA + "broken.mp4/proxy").statusCode())
                .isEqualTo(422);
    }

    @Test
    void a_still_is_the_frame_of_its_moment() throws IOException {
        String film = shoot(CameraFile.H264_AAC_MP4);

        HttpResponse<String> made = films.desk.post(film + "/still", Map.of("at", "1.72"));

        assertThat(made.statusCode()).isEqualTo(201);
        String address = json(made).get("src").asText();
        assertThat(address).isEqualTo("/e/buns/made/stills/H264_AAC_MP4-0.00.01.720.png");
        assertThat(made.headers().firstValue("Location")).contains(address);
        Path png = films.folder.resolve(json(made).get("file").asText());
        assertThat(films.bytes(address).body()).isEqualTo(Files.readAllBytes(png));
        assertThat(CameraFile.numberIn(png)).isEqualTo(43);
    }

    @Test
    void a_clip_is_what_lies_between_the_marks() throws IOException {
        String film = shoot(CameraFile.H264_AAC_MP4);

        HttpResponse<String> made = films.desk.post(film + "/clip", Map.of("from", "1.0", "to", "1.6"));

        assertThat(made.statusCode()).isEqualTo(201);
        assertThat(json(made).get("src").asText())
                .isEqualTo("/e/buns/made/clips/H264_AAC_MP4-0.00.01.000-0.00.01.600.mp4");
        Path clip = films.folder.resolve(json(made).get("file").asText());
        assertThat(Footage.probe(clip).length().toMillis()).isBetween(600L, 625L);
        assertThat(films.bytes(json(made).get("src").asText(), "Range", "bytes=4-7")
                        .body())
                .asString()
                .isEqualTo("ftyp");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            still | at=      |       | is a moment in seconds
            still | at=-1    |       | is a moment in seconds
            still | at=1e9   |       | is a moment in seconds
            still | at=NaN   |       | is a moment in seconds
            still | at=0:12  |       | is a moment in seconds
            still | at=99    |       | the film has no moment 1:39.000
            clip  | from=1   |       | is a moment in seconds
            clip  | from=2   | to=1  | a clip ends after it begins
            clip  | from=0   | to=999999 | A clip lasts up to 10 minutes
            """)
    void a_mark_that_is_none_is_a_sentence(String what, String one, String other, String sentence) {
        String film = shoot(CameraFile.H264_AAC_MP4);
        Map<String, String> form = new java.util.HashMap<>();
        Stream.of(one, other == null ? "x=" : other)
                .map(pair -> pair.split("=", 2))
                .forEach(pair -> form.put(pair[0], pair[1]));

        HttpResponse<String> answer = films.desk.post(film + "/" + what, form, "HX-Request", "true");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(sentence);
        assertThat(films.folder.resolve("out/clips"))
                .satisfiesAnyOf(folder -> assertThat(folder).doesNotExist(), folder -> assertThat(folder)
                        .isEmptyDirectory());
    }
}
