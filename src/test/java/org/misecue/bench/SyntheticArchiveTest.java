package org.misecue.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.episode.Episode;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;

class SyntheticArchiveTest {

    @TempDir
    Path folder;

    @Test
    void each_episode_can_be_read_and_is_twelve_minutes_long() throws IOException {
        SyntheticArchive.write(folder, 5, 1);
        List<Path> episodes = episodes(folder);
        assertThat(episodes).hasSize(5);
        for (Path one : episodes) {
            Episode episode = Episode.open(one);
            assertThat(episode.notes()).isEmpty();
            Recipe recipe = RecipeReader.read(episode.recipe(), "recipe.md");
            assertThat(recipe.lines()).hasSize(11);
            assertThat(recipe.steps()).hasSize(8);
            Narration narration = NarrationReader.read(episode.narration().get(0), "main.vtt");
            assertThat(narration.notes()).isEmpty();
            List<Cue> cues = narration.cues();
            assertThat(cues.get(cues.size() - 1).end()).isBetween(Duration.ofMinutes(12), Duration.ofMinutes(13));
        }
    }

    @Test
    void the_same_seed_gives_the_same_files_and_a_larger_archive_begins_with_the_smaller() throws IOException {
        SyntheticArchive.write(folder.resolve("small"), 2, 7);
        SyntheticArchive.write(folder.resolve("large"), 3, 7);
        for (Path episode : episodes(folder.resolve("small"))) {
            Path same = folder.resolve("large").resolve(episode.getFileName());
            assertThat(same.resolve("recipe.md")).hasSameBinaryContentAs(episode.resolve("recipe.md"));
            assertThat(same.resolve("narration/main.vtt"))
                    .hasSameBinaryContentAs(episode.resolve("narration/main.vtt"));
        }
    }

    private static List<Path> episodes(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
