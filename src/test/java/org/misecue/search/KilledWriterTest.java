package org.misecue.search;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KilledWriterTest {

    private static final List<String> EPISODES = List.of("episode-0", "episode-1", "episode-2");

    @TempDir
    Path archive;

    @BeforeEach
    void old() {
        try (ArchiveIndex index = ArchiveIndex.open(archive);
                ArchiveWriter writer = index.writer()) {
            for (String episode : EPISODES) {
                writer.put(episode, new Shelved("old", List.of()), List.of(Talk.said(0, "butter")), List.of());
            }
        }
    }

    @Test
    void killed_before_anything_is_kept_all_is_as_it_was() throws Exception {
        writeAndKill(false, 4);
        try (ArchiveIndex index = ArchiveIndex.open(archive)) {
            assertThat(index.find("butter", 9).hits()).hasSize(3);
            assertThat(index.find("\"margarine 7\"", 9).hits()).isEmpty();
            index.update("episode-1", List.of(Talk.said(0, "lard")), List.of());
            assertThat(index.find("lard", 9).hits()).hasSize(1);
            assertThat(index.find("butter", 9).hits()).hasSize(2);
        }
    }

    @Test
    void killed_between_two_episodes_each_is_wholly_old_or_wholly_new() throws Exception {
        writeAndKill(true, 2);
        try (ArchiveIndex index = ArchiveIndex.open(archive)) {
            for (String episode : EPISODES) {
                boolean isNew = index.episodes().get(episode).stamp().equals("new");
                assertThat(has(index, "butter", episode)).isEqualTo(!isNew);
                assertThat(has(index, "\"margarine 299\"", episode)).isEqualTo(isNew);
            }
            assertThat(index.episodes().get("episode-0").stamp()).isEqualTo("new");
        }
    }

    private static boolean has(ArchiveIndex index, String query, String episode) {
        return index.find(query, 99).hits().stream()
                .anyMatch(hit -> hit.episodeName().equals(episode));
    }

    private void writeAndKill(boolean kept, int episodes) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledWriter.class.getName(),
                        archive.toString(),
                        Boolean.toString(kept))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(child.getInputStream(), UTF_8))) {
            for (int i = 0; i < episodes; i++) {
                assertThat(out.readLine()).isEqualTo(Integer.toString(i));
            }
        } finally {
            child.destroyForcibly().waitFor(); // on Linux and macOS this is kill -9
        }
    }
}
