package org.misecue.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.search.Talk.said;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

class ArchiveIndexTest {

    @TempDir
    Path archive;

    private ArchiveIndex index;

    @BeforeEach
    void open() {
        index = ArchiveIndex.open(archive);
    }

    @AfterEach
    void close() {
        index.close();
    }

    @Test
    void a_hit_names_its_episode() {
        put("season-1/plum-cake", said(0, "fold in the butter"));
        put("sesame-buns", said(30, "melt the butter"), said(60, "sesame"));
        assertThat(found("butter"))
                .extracting(Hit::episodeName)
                .containsExactlyInAnyOrder("season-1/plum-cake", "sesame-buns");
        assertThat(found("sesame")).extracting(Hit::episodeName).containsExactly("sesame-buns");
    }

    @Test
    void an_update_replaces_one_episode_and_leaves_the_others() {
        put("a", said(0, "butter"));
        put("b", said(0, "butter"));
        put("a", said(0, "lard"));
        assertThat(found("butter")).extracting(Hit::episodeName).containsExactly("b");
        assertThat(found("lard")).extracting(Hit::episodeName).containsExactly("a");
        index.remove("b");
        assertThat(found("butter")).isEmpty();
    }

    @Test
    void the_very_word_comes_before_those_that_begin_with_it() {
        put("a", said(0, "butter"));
        put("b", said(0, "buttermilk buttermilk buttermilk"));
        put("c", said(0, "and so we come to the butter at the very end of it"));
        List<Hit> hits = found("butter");
        assertThat(hits).extracting(Hit::episodeName).containsExactly("a", "c", "b");
        assertThat(hits).extracting(Hit::score).isSortedAccordingTo((x, y) -> Double.compare(y, x));
        assertThat(index.find("melt butterm", 9).suggestion())
                .as("what is not written to its end is not misspelt")
                .isEmpty();
        assertThat(found("melt butterm"))
                .extracting(TestKitchen::marked)
                .containsExactly("[buttermilk] [buttermilk] [buttermilk]");
    }

    @Test
    void each_letter_that_is_typed_leads_to_the_word() {
        put("a", said(0, "fold the pistachios in"));
        for (String typed : List.of("pi", "pis", "pist", "pistac", "fold pis", "step:0 pis")) {
            assertThat(found(typed)).as(typed).hasSize(1);
        }
        for (String typed : List.of("pis ", "pis,", "\"pis\"")) {
            assertThat(found(typed)).as("a finished word: " + typed).isEmpty();
        }
    }

    @Test
    void what_is_equally_good_comes_in_the_order_of_names() {
        for (String episode : List.of("c", "a", "d", "b")) {
            put(episode, said(0, "butter"), said(60, "butter"));
        }
        assertThat(index.find("butter", 3).hits()).extracting(Hit::episodeName).containsExactly("a", "a", "b");
    }

    @Test
    void a_misspelt_word_is_taken_for_the_nearest_in_any_episode() {
        put("a", said(0, "fold in the raspberries"));
        put("b", said(0, "stir"));
        FindResult result = index.find("faspberries", 5);
        assertThat(result.suggestion()).contains("raspberries");
        assertThat(result.hits()).extracting(Hit::episodeName).containsExactly("a");
    }

    @Test
    void names_that_all_share_and_names_of_one_episode_both_lead_to_it() {
        try (ArchiveWriter writer = index.writer()) {
            writer.share(List.of(Set.of("icing sugar", "powdered sugar")));
            List<Set<String>> own = List.of(Set.of("icing sugar", "powdered sugar"), Set.of("maida", "plain flour"));
            writer.put("a", new Shelved("", List.of()), List.of(said(0, "icing sugar"), said(60, "plain flour")), own);
        }
        index.refresh();
        assertThat(found("powdered sugar")).hasSize(1);
        assertThat(found("maida")).hasSize(1);
        try (ArchiveWriter writer = index.writer()) {
            writer.share(List.of());
            writer.remove("a");
            writer.put("b", new Shelved("", List.of()), List.of(said(0, "icing sugar")), List.of());
        }
        index.refresh();
        assertThat(index.find("powdered sugar", 5).hits())
                .as("only by one of its words")
                .extracting(TestKitchen::marked)
                .containsExactly("icing [sugar]");
    }

    @Test
    void one_episode_is_found_as_it_is_by_itself() throws IOException {
        Path episode = archive.resolve("pear-cake");
        MomentIndex.build(episode, TestKitchen.passages(), TestKitchen.OTHER_NAMES);
        index.update("pear-cake", TestKitchen.passages(), TestKitchen.OTHER_NAMES);
        for (String row : TestKitchen.lines("queries.txt")) {
            if (!row.startsWith("#") && !row.isBlank()) {
                String query = row.substring(0, row.indexOf('|')).strip();
                FindResult alone = MomentIndex.find(episode, query, 5);
                FindResult among = index.find(query, 5);
                assertThat(among.suggestion()).isEqualTo(alone.suggestion());
                assertThat(among.hits().stream().map(ArchiveIndexTest::withoutEpisode))
                        .as(query)
                        .startsWith(alone.hits().stream()
                                .map(ArchiveIndexTest::withoutEpisode)
                                .toArray(Hit[]::new));
            }
        }
    }

    @Test
    void what_another_wrote_is_found_after_refreshing() {
        try (ArchiveIndex other = ArchiveIndex.open(archive)) {
            other.update("a", List.of(said(0, "butter")), List.of());
            assertThat(found("butter")).isEmpty();
            index.refresh();
            assertThat(found("butter")).hasSize(1);
        }
    }

    @Test
    void it_remembers_each_episode() {
        Shelved shelved = new Shelved("recipe.md 12", List.of("the oven is missing", "so is the tin"));
        try (ArchiveWriter writer = index.writer()) {
            writer.put("b", new Shelved("", List.of()), List.of(), List.of());
            writer.put("a", shelved, List.of(), List.of());
        }
        index.refresh();
        assertThat(index.episodes()).containsOnlyKeys("a", "b").containsEntry("a", shelved);
    }

    @Test
    void many_may_ask_while_it_is_written_to() throws Exception {
        put("a", said(0, "butter"));
        ExecutorService people = Executors.newFixedThreadPool(4);
        try {
            List<Future<Integer>> answers = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                answers.add(people.submit(() -> found("butter").size()));
            }
            for (int i = 0; i < 10; i++) {
                put("a", said(i, "butter"));
            }
            for (Future<Integer> answer : answers) {
                assertThat(answer.get()).isEqualTo(1);
            }
        } finally {
            people.shutdownNow();
        }
    }

    @Test
    void while_one_writes_another_is_told_to_wait() {
        try (ArchiveWriter writer = index.writer()) {
            writer.remove("a");
            assertThatThrownBy(() -> put("a", said(0, "butter")))
                    .isInstanceOf(BadInput.class)
                    .hasMessage(archive + ": its index is just being made by another misecue; wait for it");
        }
        put("a", said(0, "butter"));
    }

    @Test
    void a_damaged_index_is_begun_anew() throws IOException {
        put("a", said(0, "butter"));
        index.close();
        try (Stream<Path> files = Files.list(archive.resolve(".misecue/index"))) {
            for (Path file : files.toList()) {
                Files.write(file, new byte[] {1});
            }
        }
        index = ArchiveIndex.open(archive);
        assertThat(found("butter")).isEmpty();
        put("a", said(0, "butter"));
        assertThat(found("butter")).hasSize(1);
    }

    @Test
    void the_index_of_an_episode_in_its_place_is_not_taken_for_it() {
        MomentIndex.build(archive, List.of(said(0, "butter")), List.of());
        try (ArchiveIndex other = ArchiveIndex.open(archive)) {
            assertThat(other.find("butter", 5).hits()).isEmpty();
            assertThat(other.episodes()).isEmpty();
        }
    }

    @Test
    void a_query_without_a_word_says_what_was_expected() {
        assertThatThrownBy(() -> index.find("?!", 5)).isInstanceOf(BadInput.class);
    }

    @Test
    void an_unwritable_place_is_a_sentence() throws IOException {
        Path file = Files.writeString(archive.resolve("file"), "no folder");
        assertThatThrownBy(() -> ArchiveIndex.open(file))
                .isInstanceOf(BadInput.class)
                .hasMessage(file + ": its index cannot be written; check that .misecue is writable");
    }

    private void put(String episode, Passage... passages) {
        index.update(episode, List.of(passages), List.of());
    }

    private List<Hit> found(String query) {
        return index.find(query, 9).hits();
    }

    /** Nor the score, which is rounded otherwise where there are more documents. */
    private static Hit withoutEpisode(Hit hit) {
        return new Hit(
                Path.of(""),
                hit.kind(),
                hit.source(),
                hit.at(),
                hit.end(),
                hit.quote(),
                hit.marks(),
                hit.step(),
                hit.speaker(),
                0);
    }
}
