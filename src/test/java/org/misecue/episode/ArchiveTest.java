package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

class ArchiveTest {

    @TempDir
    Path folder;

    @Test
    void folders_with_a_recipe_are_episodes_also_in_folders_of_folders() {
        write("plum-cake/recipe.md");
        write("buns/Sesame Buns.docx");
        write("season-2/tart/recipe.md");
        write("season-2/rolls/recipe.odt");
        assertThat(names()).containsExactly("buns", "plum-cake", "season-2/rolls", "season-2/tart");
    }

    @Test
    void what_is_no_episode_is_passed_over() {
        write("README.md");
        write("season-1/README.md");
        write("season-1/tart/recipe.md");
        write("music/theme.wav");
        write(".hidden/recipe.md");
        write("a/b/c/d/e/f/recipe.md");
        assertThat(names()).as("a document beside episodes makes no episode").containsExactly("season-1/tart");
    }

    @Test
    void nothing_is_looked_for_inside_an_episode() {
        write("tart/pear tart.md");
        write("tart/narration/main.txt");
        write("tart/out/print/recipe.html");
        assertThat(names()).containsExactly("tart");
    }

    @Test
    void links_that_go_round_end() throws IOException {
        write("tart/recipe.md");
        Files.createSymbolicLink(folder.resolve("again"), folder);
        assertThat(names()).containsExactly("tart");
    }

    @Test
    void an_episode_or_a_file_is_no_archive() {
        write("tart/recipe.md");
        assertThatThrownBy(() -> Archive.open(folder.resolve("tart")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("this is one episode");
        assertThatThrownBy(() -> Archive.open(folder.resolve("tart/recipe.md")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("this is a file");
        assertThatThrownBy(() -> Archive.open(folder.resolve("none")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("there is no such folder");
    }

    private Iterable<String> names() {
        Archive archive = Archive.open(folder);
        return archive.episodes().stream().map(archive::name).toList();
    }

    private void write(String name) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, "");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
