package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class NewEpisodeTest {

    @TempDir
    Path temp;

    @Test
    void makes_a_folder_that_opens() throws IOException {
        Path recipe = Files.writeString(temp.resolve("plait.MD"), "# Plait");
        Path folder = temp.resolve("plait");
        NewEpisode.make(recipe, "The \"long\" plait\\", folder, "plait");
        Episode episode = Episode.open(folder);
        assertThat(episode.recipe()).isEqualTo(folder.resolve("recipe.md")).hasContent("# Plait");
        assertThat(episode.settings().title()).isEqualTo(Optional.of("The \"long\" plait\\"));
        assertThat(recipe).exists();
    }

    @Test
    void every_setting_offered_in_the_file_is_one_that_is_understood() throws IOException {
        Path recipe = Files.writeString(temp.resolve("plait.md"), "# Plait");
        NewEpisode.make(recipe, "Plait", temp.resolve("plait"), "plait");
        String offered = Files.readString(temp.resolve("plait/episode.yaml"))
                .replaceAll("# Every.*", "")
                .replaceAll("(?m)^#", "");
        assertThat(SettingsReader.read(offered, "episode.yaml").sets().takes()).isEqualTo(1);
        assertThat(SettingsReader.read(offered, "episode.yaml").publish().maxLength())
                .hasValue(5000);
    }

    @ParameterizedTest
    @CsvSource({
        "Plait, '', '', 1",
        "'A \"long\" plait\\: 100 % # butter', times, ½, 9",
        "'', makes, 24 buns, 2",
        "crème 🍰, have, 310 g butter, 1",
        "takes: 3, tin, 33 × 23 cm, 4"
    })
    void first_settings_are_known_again_and_mean_what_was_said(String title, String size, String amount, int takes) {
        FirstSettings settings = new FirstSettings(title, size, amount, takes);
        assertThat(FirstSettings.read(settings.text())).contains(settings);
        EpisodeSettings read = SettingsReader.read(settings.text(), "episode.yaml");
        assertThat(read.title().orElse("")).isEqualTo(title);
        assertThat(read.batch()).isEqualTo(settings.batch());
        assertThat(read.sets().takes()).isEqualTo(takes);
    }

    @Test
    void what_somebody_wrote_by_hand_is_no_first_setting() {
        String text = FirstSettings.of("Plait").text();
        assertThat(FirstSettings.read(text.replace("#language", "language"))).isEmpty();
        assertThat(FirstSettings.read(text + "takes: 2 \n")).isEmpty();
        assertThat(FirstSettings.read("")).isEmpty();
    }

    @Test
    void never_writes_into_a_folder_with_contents() throws IOException {
        Path recipe = Files.writeString(temp.resolve("plait.md"), "# Plait");
        assertThatThrownBy(() -> NewEpisode.make(recipe, "Plait", temp, "here"))
                .isInstanceOf(BadInput.class)
                .hasMessage("here: this folder has something in it already; choose a new or an empty one.");
        assertThatThrownBy(() -> NewEpisode.make(recipe, "Plait", recipe, "plait.md"))
                .isInstanceOf(BadInput.class)
                .hasMessage("plait.md: a file has this name already; choose another for the episode.");
        assertThat(recipe).hasContent("# Plait");
    }

    @ParameterizedTest
    @CsvSource({"Plum & almond plait!, plum-and-almond-plait", "Crème brûlée tart, crème-brûlée-tart", "…, episode"})
    void names_the_folder_after_the_title(String title, String name) {
        assertThat(NewEpisode.folderName(title.replace("&", "and"))).isEqualTo(name);
    }
}
