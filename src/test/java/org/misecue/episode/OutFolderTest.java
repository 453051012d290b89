package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

class OutFolderTest {

    @TempDir
    Path temp;

    private Path folder;
    private OutFolder out;

    @BeforeEach
    void an_episode() throws IOException {
        folder = Files.createDirectory(temp.resolve("episode"));
        out = new OutFolder(folder, "out");
    }

    @Test
    void writes_whole_files_over_older_results_and_leaves_nothing_else() throws IOException {
        out.write("stills/one.txt", "first");
        Path file = out.write("stills/one.txt", "second");
        assertThat(file).isEqualTo(folder.resolve("out/stills/one.txt")).hasContent("second");
        try (Stream<Path> files = Files.list(folder.resolve("out/stills"))) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void a_result_that_fails_half_way_leaves_the_older_one() throws IOException {
        Path file = out.write("clip.mp4", "older");
        assertThatThrownBy(() -> out.make("clip.mp4", path -> {
                    Files.writeString(path, "half");
                    throw new IOException("no space");
                }))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "out/clip.mp4: this cannot be written (the disk refused it); free the place or choose another.");
        assertThat(file).hasContent("older");
        try (Stream<Path> files = Files.list(out.folder())) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void a_file_in_the_place_of_the_folder_stays() throws IOException {
        Files.writeString(folder.resolve("out"), "mine");
        assertThatThrownBy(() -> out.write("prep.html", "x"))
                .isInstanceOf(BadInput.class)
                .hasMessage("out: a file stands where results go; move it away or give it another name.");
        assertThat(folder.resolve("out")).hasContent("mine");
    }

    @Test
    void a_folder_in_the_place_of_a_result_stays() throws IOException {
        Files.createDirectories(folder.resolve("out/prep.html"));
        assertThatThrownBy(() -> out.write("prep.html", "x"))
                .isInstanceOf(BadInput.class)
                .hasMessage("out/prep.html: a folder stands where this file goes; move it away.");
    }

    @Test
    void links_that_lead_out_of_the_episode_are_refused() throws IOException {
        Path elsewhere = Files.createDirectory(temp.resolve("elsewhere"));
        Files.createSymbolicLink(folder.resolve("out"), elsewhere);
        assertThatThrownBy(() -> out.write("prep.html", "x"))
                .isInstanceOf(BadInput.class)
                .hasMessage("out: this link leads out of the episode; put a real folder in its place.");
        assertThat(elsewhere).isEmptyDirectory();
    }

    @Test
    void a_link_in_the_place_of_a_result_is_replaced_and_its_target_kept() throws IOException {
        Path elsewhere = Files.writeString(temp.resolve("precious.txt"), "precious");
        Files.createDirectory(folder.resolve("out"));
        Files.createSymbolicLink(folder.resolve("out/prep.txt"), elsewhere);
        Path file = out.write("prep.txt", "bowls");
        assertThat(elsewhere).hasContent("precious");
        assertThat(file).hasContent("bowls").isRegularFile();
        assertThat(Files.isSymbolicLink(file)).isFalse();
    }

    @Test
    void names_that_climb_out_are_refused() {
        assertThatThrownBy(() -> out.write("../recipe.md", "x"))
                .isInstanceOf(BadInput.class)
                .hasMessage("out/../recipe.md: results stay inside out/; choose a name without “..”.");
        assertThat(folder).isEmptyDirectory();
    }
}
