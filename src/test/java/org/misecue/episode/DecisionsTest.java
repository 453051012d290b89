package org.misecue.episode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class DecisionsTest {

    private static final LocalDateTime MONDAY = LocalDateTime.of(2026, 5, 4, 10, 0);

    @TempDir
    private Path folder;

    @BeforeEach
    void there_is_an_episode() throws IOException {
        Files.writeString(folder.resolve("recipe.md"), "# Buns\n");
    }

    private Decisions decisions() {
        return new Decisions(Episode.locate(folder));
    }

    @Test
    void nothing_is_decided_before_anybody_decides() {
        assertThat(decisions().read()).isEmpty();
    }

    @Test
    void a_later_decision_takes_the_place_of_an_earlier_one_and_undoing_takes_it_back() {
        decisions().change(List.of(one("butter", Choice.KEEP), one("sugar", Choice.FIX)), List.of());
        decisions().change(List.of(one("butter", Choice.PICKUP)), List.of());
        assertThat(decisions().read()).containsExactly(one("butter", Choice.PICKUP), one("sugar", Choice.FIX));

        decisions().change(List.of(), List.of("butter"));
        assertThat(decisions().read()).containsExactly(one("sugar", Choice.FIX));
    }

    @Test
    void decisions_taken_at_once_are_all_kept() throws Exception {
        ExecutorService crew = Executors.newFixedThreadPool(4);
        List<Future<?>> all = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            String about = "line " + i;
            all.add(crew.submit(() -> decisions().change(List.of(one(about, Choice.KEEP)), List.of())));
        }
        for (Future<?> done : all) {
            done.get();
        }
        crew.shutdown();
        assertThat(decisions().read()).hasSize(20);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            butter: keep                                        | .misecue/decisions.yaml:1
            - butter                                            | .misecue/decisions.yaml:1
            - {about: butter, decision: kepe, when: 2026-05-04 10:00} | keep, fix, pickup or cover
            - {about: butter, decision: keep, when: monday}     | a day and a time
            - {about: butter, decision: keep}                   | a day and a time
            - {decision: keep, when: 2026-05-04 10:00}          | what it is about
            - {about: butter, choice: keep}                     | “choice” is not a setting
            - {about: [a], decision: keep}                      | must be one value
            """)
    void a_file_that_was_mended_wrongly_is_told_with_its_line(String text, String told) throws IOException {
        Files.createDirectories(folder.resolve(".misecue"));
        Files.writeString(folder.resolve(".misecue/decisions.yaml"), text);
        assertThatThrownBy(() -> decisions().read())
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(told)
                .hasMessageContaining(".misecue/decisions.yaml");
    }

    private static Decision one(String about, Choice choice) {
        return new Decision(about, choice, "Nell", MONDAY, "", List.of("written: 175 g"));
    }

    /** Whatever people write comes back as it was. */
    static class Properties {

        @Property(tries = 200)
        void any_text_comes_back_as_it_was(
                @ForAll @Size(min = 1, max = 3) List<String> texts, @ForAll String who, @ForAll String note)
                throws IOException {
            Path folder = Files.createTempDirectory("decisions");
            try {
                Files.writeString(folder.resolve("recipe.md"), "# Buns\n");
                Decisions decisions = new Decisions(Episode.locate(folder));
                List<String> printable = texts.stream().map(Properties::whole).toList();
                Decision one = new Decision(
                        "about" + printable.get(0), Choice.COVER, whole(who), MONDAY, whole(note), printable);
                decisions.change(List.of(one), List.of());
                assertThat(decisions.read()).containsExactly(one);
            } finally {
                Files.deleteIfExists(folder.resolve(".misecue/decisions.yaml"));
                Files.deleteIfExists(folder.resolve(".misecue/decisions.yaml.lock"));
                Files.deleteIfExists(folder.resolve(".misecue"));
                Files.deleteIfExists(folder.resolve("recipe.md"));
                Files.deleteIfExists(folder);
            }
        }

        /** Half a surrogate pair is no character of any file; white space at the ends goes, as everywhere. */
        private static String whole(String text) {
            return text.replaceAll("[\\ud800-\\udfff]", "").strip();
        }
    }
}
