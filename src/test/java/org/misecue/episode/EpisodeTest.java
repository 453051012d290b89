package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class EpisodeTest {

    private static final String PUT =
            "put a recipe in it, such as recipe.md, or make an episode with “misecue new RECIPE”.";

    @TempDir
    Path folder;

    private void file(String name) throws IOException {
        Path path = folder.resolve(name);
        Files.createDirectories(path.getParent());
        Files.writeString(path, "text");
    }

    @Test
    void finds_each_kind_of_file_in_the_order_of_names() throws IOException {
        for (String name : new String[] {
            "recipe.md",
            "README.md",
            "narration/b.srt",
            "narration/a.vtt",
            "narration/.hidden.vtt",
            "narration/cover.png",
            "footage/A002.MP4",
            "footage/A001.mov"
        }) {
            file(name);
        }
        Episode episode = Episode.open(folder);
        assertThat(episode.name(episode.recipe())).isEqualTo("recipe.md");
        assertThat(episode.narration()).extracting(episode::name).containsExactly("narration/a.vtt", "narration/b.srt");
        assertThat(episode.footage()).extracting(episode::name).containsExactly("footage/A001.mov", "footage/A002.MP4");
        assertThat(episode.settings()).isEqualTo(EpisodeSettings.DEFAULT);
        assertThat(episode.notes())
                .extracting(Object::toString)
                .containsExactly(
                        "narration/cover.png: this is not a narration (.vtt, .srt, .ttml, .xml, .json or .txt); it was left aside.");
    }

    @Test
    void takes_the_only_document_where_none_is_named_recipe() throws IOException {
        file("plum plait.DOCX");
        file("poster.png");
        Episode episode = Episode.open(folder);
        assertThat(episode.name(episode.recipe())).isEqualTo("plum plait.DOCX");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "''|the folder is empty; PUT",
                "poster.png|there is no recipe in this folder; PUT",
                "narration/a.vtt|there is no recipe in this folder; PUT",
                "recipe.md recipe.docx|an episode has one recipe, and here are recipe.docx and recipe.md; keep one.",
                "b.md a.md|an episode has one recipe, and here are a.md and b.md; name the right one recipe.md."
            })
    void says_what_is_missing_or_too_much(String files, String sentence) throws IOException {
        for (String name : files.replace("'", "").split(" ")) {
            if (!name.isEmpty()) {
                file(name);
            }
        }
        assertThatThrownBy(() -> Episode.open(folder))
                .isInstanceOf(BadInput.class)
                .hasMessage(folder + ": " + sentence.replace("PUT", PUT));
    }

    @Test
    void a_missing_folder_and_a_file_are_no_episode() throws IOException {
        file("recipe.md");
        Path file = folder.resolve("recipe.md");
        assertThatThrownBy(() -> Episode.open(file))
                .hasMessage(file + ": this is a file, and an episode is a folder; name the folder.");
        Path missing = folder.resolve("missing");
        assertThatThrownBy(() -> Episode.open(missing))
                .hasMessage(missing + ": there is no such folder; check the name.");
    }
}
