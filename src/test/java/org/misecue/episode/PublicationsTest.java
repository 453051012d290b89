package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class PublicationsTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void there_is_an_episode() throws IOException {
        Files.writeString(folder.resolve("recipe.md"), "# Buns\n");
    }

    @Test
    void what_went_out_last_is_what_a_correction_starts_from() {
        Publications publications = new Publications(Episode.locate(folder));
        assertThat(publications.last()).isEmpty();

        Publication first = new Publication(LocalDate.of(2026, 5, 20), "Nell", "", List.of(), List.of());
        Publication second = new Publication(
                LocalDate.of(2026, 6, 1),
                "Nell \"N.\"",
                "the cardamom: said \\ shown",
                List.of(
                        new Publication.Item("cake: butter", "175 g", "175 g butter, \"soft\""),
                        new Publication.Item("cake: salt", "", "salt")),
                List.of("milk", "sesame"));
        publications.add(first);
        publications.add(second);

        assertThat(publications.read()).containsExactly(first, second);
        assertThat(publications.last()).contains(second);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            published: yes                          | .misecue/published.yaml:1
            - {on: yesterday}                       | a day
            - {on: 2026-02-30}                      | a day
            - {on: 2026-05-20, things: []}          | “things” is not a setting
            - {on: 2026-05-20, items: [butter]}     | each item is a block of settings
            """)
    void a_file_that_was_mended_wrongly_is_told_with_its_line(String text, String told) throws IOException {
        Files.createDirectories(folder.resolve(".misecue"));
        Files.writeString(folder.resolve(".misecue/published.yaml"), text);
        assertThatThrownBy(() -> new Publications(Episode.locate(folder)).read())
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(told)
                .hasMessageContaining(".misecue/published.yaml");
    }
}
