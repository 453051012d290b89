package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;
import org.misecue.search.Hit;

class ArchiveShelfTest {

    @TempDir
    Path folder;

    private ArchiveShelf shelf;

    @BeforeEach
    void open() {
        shelf = ArchiveShelf.open(folder, Optional.empty());
    }

    @AfterEach
    void close() {
        shelf.close();
    }

    @Test
    void only_what_has_changed_is_indexed_again() throws IOException {
        episode("tart", "[0:10] fold the pistachios in\n");
        episode("buns", "[0:10] knead the dough\n");
        assertThat(freshen().changed()).containsExactlyInAnyOrder("buns", "tart");
        assertThat(freshen().changed()).isEmpty();
        write("buns/narration/main.txt", "[0:10] knead it with the pistachios\n");
        assertThat(freshen().changed()).containsExactly("buns");
        assertThat(found("pistachios")).extracting(Hit::episodeName).containsExactlyInAnyOrder("buns", "tart");
        assertThat(found("dough")).isEmpty();
    }

    @Test
    void an_episode_that_is_gone_is_forgotten() throws IOException {
        episode("tart", "[0:10] fold the pistachios in\n");
        episode("buns", "[0:10] knead the dough\n");
        freshen();
        delete("tart");
        assertThat(freshen().gone()).containsExactly("tart");
        assertThat(found("pistachios")).isEmpty();
    }

    @Test
    void it_is_told_how_far_it_has_come() throws IOException {
        for (int i = 10; i < 35; i++) {
            episode("tart-" + i, "");
        }
        List<String> told = new ArrayList<>();
        shelf.freshen((done, changed, episode) -> told.add(done + " of " + changed + ": " + episode));
        assertThat(told).containsExactly("0 of 25: tart-10", "20 of 25: tart-30");
    }

    @Test
    void a_bad_recipe_is_noted_and_what_was_said_is_found_all_the_same() throws IOException {
        episode("tart", "[0:10] fold the pistachios in\n");
        episode("buns", "[0:10] knead the dough with pistachios\n");
        Files.write(folder.resolve("buns/recipe.md"), new byte[0]);
        Shelving shelving = freshen();
        assertThat(shelving.newNotes()).hasSize(1).first().asString().startsWith("buns/recipe.md: ");
        assertThat(found("pistachios")).hasSize(2);
        Shelving again = freshen();
        assertThat(again.changed())
                .as("it is not read again before it has changed")
                .isEmpty();
        assertThat(again.newNotes()).isEmpty();
        assertThat(again.notes()).isEqualTo(shelving.notes());
    }

    @Test
    void a_bad_narration_is_noted_and_the_others_are_found() throws IOException {
        episode("tart", "[0:10] fold the pistachios in\n");
        write("tart/narration/second.json", "{ not json");
        episode("buns", "[0:10] pistachios\n");
        assertThat(freshen().notes()).hasSize(1).first().asString().startsWith("tart/narration/second.json:1:3: ");
        assertThat(found("pistachios")).hasSize(2);
    }

    @Test
    void two_recipes_in_one_folder_are_noted_until_one_is_gone() throws IOException {
        episode("tart", "[0:10] fold the pistachios in\n");
        episode("buns", "[0:10] pistachios\n");
        write("buns/recipe.txt", "Buns\n");
        assertThat(freshen().notes()).hasSize(1).first().asString().contains("an episode has one recipe");
        assertThat(found("pistachios")).extracting(Hit::episodeName).containsExactly("tart");
        Files.delete(folder.resolve("buns/recipe.txt"));
        assertThat(freshen().notes()).isEmpty();
        assertThat(found("pistachios")).hasSize(2);
    }

    @Test
    void other_names_lead_to_what_was_said_also_those_of_one_episode() throws IOException {
        episode("tart", "[0:10] a spoonful of powdered sugar\n[1:00] and a tot of plumshine\n");
        write("tart/pantry.yaml", "- {name: plumshine, also: [orchard syrup]}\n");
        episode("buns", "[0:10] knead the dough\n");
        assertThat(freshen().notes()).isEmpty();
        assertThat(found("icing sugar")).hasSize(1);
        assertThat(found("orchard syrup")).hasSize(1);
    }

    @Test
    void a_folder_without_episodes_is_a_sentence_and_what_was_indexed_stays() throws IOException {
        episode("tart", "[0:10] fold the pistachios in\n");
        freshen();
        delete("tart");
        assertThatThrownBy(this::freshen)
                .isInstanceOf(BadInput.class)
                .hasMessage(folder + ": there are no episodes in this folder; name the folder in which they lie.");
        assertThat(found("pistachios")).hasSize(1);
    }

    private Shelving freshen() {
        return shelf.freshen((done, changed, episode) -> {});
    }

    private List<Hit> found(String query) {
        return shelf.find(query, 9).hits();
    }

    private void episode(String name, String narration) throws IOException {
        write(name + "/recipe.md", "# " + name + "\n\n- 100 g flour\n\n## Method\n\n1. Fold in the flour.\n");
        write(name + "/narration/main.txt", narration.isEmpty() ? "[0:10] hello\n" : narration);
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        boolean isNew = !Files.exists(file);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        if (!isNew) {
            Files.setLastModifiedTime(
                    file, FileTime.fromMillis(Files.getLastModifiedTime(file).toMillis() + 1000));
        }
    }

    private void delete(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve(name))) {
            for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(file);
            }
        }
    }
}
