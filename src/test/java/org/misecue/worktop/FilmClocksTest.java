package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.episode.Episode;

class FilmClocksTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "a.mp4|a.vtt||a.vtt=a.mp4",
                "a.mp4|b.vtt||b.vtt=a.mp4",
                "a.mp4|a.vtt b.vtt||a.vtt=a.mp4 b.vtt=b.vtt",
                "a.mp4|a.vtt b.vtt|b.vtt: 1:00|a.vtt=a.mp4 b.vtt=a.mp4",
                "a.mp4|p.vtt q.vtt|q.vtt: 1:00|p.vtt=a.mp4 q.vtt=a.mp4",
                "a.mp4 b.mp4|a.vtt q.vtt|q.vtt: 1:00|a.vtt=a.mp4 q.vtt=q.vtt",
                "a.mp4 b.mp4|a.vtt q.vtt|q.vtt: {film: b.mp4, begins: 1:00}|a.vtt=a.mp4 q.vtt=b.mp4",
                "a.mp4 b.mp4|a.vtt q.vtt|a.vtt: {film: footage/b.mp4, begins: 0:00}|a.vtt=b.mp4 q.vtt=q.vtt",
                "none|p.vtt q.vtt|q.vtt: 1:00|p.vtt= q.vtt=",
                "none|p.vtt q.vtt||p.vtt=p.vtt q.vtt=q.vtt",
                "a.mov a.mp4|a.vtt||a.vtt=a.mov"
            })
    void a_narration_runs_on_the_clock_of_its_film(String films, String narrations, String offset, String clocks)
            throws IOException {
        Files.writeString(folder.resolve("recipe.md"), "# Buns\n");
        put("footage", films);
        put("narration", narrations);
        if (offset != null) {
            Files.writeString(folder.resolve("episode.yaml"), "narration:\n  offsets:\n    " + offset + "\n");
        }
        Episode episode = Episode.open(folder);
        FilmClocks known = new FilmClocks(episode, episode.settings().offsets());
        assertThat(Stream.of(narrations.split(" "))
                        .map(name -> name + "="
                                + known.clockOf("narration/" + name).replaceAll("^(footage|narration)/", "")))
                .containsExactly(clocks.split(" "));
        episode.footage()
                .forEach(film -> assertThat(known.filmOf(episode.name(film))).hasValue(film));
    }

    private void put(String in, String names) throws IOException {
        Files.createDirectories(folder.resolve(in));
        if (names != null) {
            for (String name : names.split(" ")) {
                Files.createFile(folder.resolve(in).resolve(name));
            }
        }
    }
}
