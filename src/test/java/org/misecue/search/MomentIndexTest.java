package org.misecue.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.search.Talk.said;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.AbstractSet;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.NIOFSDirectory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.narration.Word;
import org.misecue.notice.BadInput;

class MomentIndexTest {

    @TempDir
    Path episode;

    @Test
    void the_moment_is_when_the_word_begins_not_the_cue() {
        Word[] words = {word("now", 60_000), word("the", 60_400), word("cardamom", 67_250)};
        build(cue(60, 70, words));
        assertThat(only("cardamom").at()).isEqualTo(Duration.ofMillis(67_250));
    }

    @Test
    void without_word_times_the_moment_is_the_start() {
        build(Passage.step(3, "Crush the cardamom pods.", "recipe.md", seconds(95), seconds(120)));
        assertThat(only("cardamom").at()).isEqualTo(seconds(95));
        assertThat(only("cardamom").kind()).isEqualTo(Passage.Kind.STEP);
    }

    @Test
    void near_repeats_become_one_hit() {
        build(said(0, "butter"), said(8, "more butter"), said(30, "butter again"));
        assertThat(found("butter")).extracting(Hit::at).containsExactlyInAnyOrder(seconds(0), seconds(30));
    }

    @Test
    void steps_and_shots_do_not_become_one_hit_with_narration() {
        build(
                said(0, "butter"),
                Passage.step(1, "Melt the butter.", "recipe.md", seconds(0), seconds(5)),
                Passage.shot(1, "Butter melting, from above", "out/shots.csv", seconds(0), seconds(5)));
        assertThat(found("butter"))
                .extracting(Hit::kind)
                .containsExactlyInAnyOrder(Passage.Kind.NARRATION, Passage.Kind.STEP, Passage.Kind.SHOT);
    }

    @Test
    void a_phrase_over_a_border_belongs_to_the_cue_in_which_it_begins() {
        build(said(0, "seventy five grams of soft brown"), said(10, "sugar in the pan"));
        Hit hit = only("\"brown sugar\"");
        assertThat(hit.quote()).startsWith("seventy five grams of soft brown sugar");
        assertThat(hit.end()).isEqualTo(seconds(19));
    }

    @Test
    void a_phrase_does_not_reach_over_a_long_pause() {
        build(said(0, "soft brown"), said(60, "sugar in the pan"));
        assertThat(found("\"brown sugar\"")).noneMatch(hit -> hit.marks().size() > 1);
    }

    @Test
    void the_very_words_of_a_quotation_go_before_other_forms_of_them() {
        build(said(0, "it wants mixing"), said(30, "wants to be mixed, wants mixed"), said(60, "it wanted mixing"));
        assertThat(found("\"wanted mixing\"").get(0).at()).isEqualTo(seconds(61));
        assertThat(found("\"wanted mixing\"")).hasSize(3);
    }

    @Test
    void what_was_said_goes_before_what_sounds_alike() {
        build(said(0, "a flower on top"), said(30, "the flour goes in"));
        assertThat(found("flour")).extracting(Hit::at).containsExactly(seconds(31), seconds(1));
    }

    @Test
    void icing_is_not_ice() {
        build(said(0, "put it on ice"), said(30, "now the icing"));
        assertThat(only("icing").quote()).isEqualTo("now the icing");
        assertThat(only("ice").quote()).isEqualTo("put it on ice");
    }

    @Test
    void the_step_narrows_the_search() {
        Passage first = new Passage(
                Passage.Kind.NARRATION,
                "a.vtt",
                seconds(0),
                seconds(5),
                "butter",
                1,
                Optional.of("Ada"),
                List.of(),
                List.of(),
                Set.of());
        Passage second = new Passage(
                Passage.Kind.NARRATION,
                "a.vtt",
                seconds(50),
                seconds(55),
                "butter",
                2,
                Optional.of("Bo"),
                List.of(),
                List.of(),
                Set.of());
        build(first, second);
        assertThat(only("butter step:2").speaker()).contains("Bo");
        assertThat(only("step:1").quote()).isEqualTo("butter");
        assertThat(found("butter step:9")).isEmpty();
    }

    @Test
    void a_misspelt_word_is_taken_for_the_nearest_and_says_so() {
        build(said(0, "fold in the raspberries"));
        FindResult result = MomentIndex.find(episode, "fold faspberries", 5);
        assertThat(result.hits()).hasSize(1);
        assertThat(result.suggestion()).contains("fold raspberries");
    }

    @Test
    void a_last_word_that_nobody_said_is_taken_for_the_beginning_of_others() {
        build(said(0, "chop the pistachios"), said(30, "a pinch of salt"));
        FindResult result = MomentIndex.find(episode, "chop pis", 5);
        assertThat(result.suggestion()).isEmpty();
        assertThat(result.hits()).extracting(TestKitchen::marked).containsExactly("[chop] the [pistachios]");
        assertThat(found("pis salt"))
                .as("only the last word can be unfinished")
                .extracting(Hit::quote)
                .containsExactly("a pinch of salt");
    }

    @Test
    void a_word_that_was_said_is_not_taken_for_a_beginning() {
        build(said(0, "butter"), said(30, "buttermilk"));
        assertThat(found("butter")).extracting(Hit::quote).containsExactly("butter");
    }

    @Test
    void a_name_that_nobody_said_is_not_taken_for_a_misspelling() {
        MomentIndex.build(episode, List.of(said(0, "a cup of maids")), List.of(Set.of("maida", "plain flour")));
        assertThat(MomentIndex.find(episode, "maida", 5).suggestion()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "butter AND (", "butter:", "\"butter", "butter~2^", "[butter TO *]", "butter\\", "step:x butter",
                "\"\" butter", "-butter +", "/butter/", "butter && ||", "step:999999 step:0 butter", "“butter”",
                        "BUTTER!"
            })
    void no_query_is_ill_formed(String query) {
        build(said(0, "butter"));
        assertThat(found(query)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "()", "\"\"", "???"})
    void a_query_without_a_word_says_what_was_expected(String query) {
        build(said(0, "butter"));
        assertThatThrownBy(() -> found(query))
                .isInstanceOf(BadInput.class)
                .hasMessage("find: expected a word to look for, such as: find butter");
    }

    @Test
    void a_new_index_forgets_the_old() {
        build(said(0, "butter"));
        build(said(0, "margarine"));
        assertThat(found("butter")).isEmpty();
        assertThat(only("margarine").at()).isEqualTo(seconds(0));
    }

    @Test
    void a_rebuild_that_dies_leaves_the_old_index() {
        build(said(0, "butter"));
        assertThatThrownBy(() -> MomentIndex.build(episode, List.of(said(0, "margarine")), List.of(new Breaks())))
                .isInstanceOf(IllegalStateException.class);
        assertThat(only("butter").at()).isEqualTo(seconds(0));
        assertThat(found("margarine")).isEmpty();
        build(said(0, "margarine"));
        assertThat(found("margarine")).hasSize(1);
    }

    @Test
    void a_killed_rebuild_leaves_the_old_index() throws IOException {
        build(said(0, "butter"));
        Path index = episode.resolve(".misecue/index");
        Files.write(index.resolve("_7.fdt"), new byte[] {1, 2, 3}); // what a killed writer leaves
        Files.write(index.resolve("pending_segments_9"), new byte[] {4, 5});
        assertThat(only("butter").at()).isEqualTo(seconds(0));
        build(said(0, "margarine"));
        assertThat(found("margarine")).hasSize(1);
        assertThat(index.resolve("_7.fdt")).doesNotExist();
    }

    @Test
    void a_search_goes_on_while_the_index_is_made_anew() throws IOException {
        build(said(0, "butter"));
        try (Directory directory = new NIOFSDirectory(episode.resolve(".misecue/index"));
                IndexReader open = DirectoryReader.open(directory)) {
            build(said(0, "margarine"));
            FindResult result = new MomentSearch(
                            new IndexSearcher(open), new Vocabulary().read(open), new Scope.OneEpisode(episode))
                    .find("butter", Ask.of("butter"), 5);
            assertThat(result.hits()).hasSize(1);
        }
    }

    @Test
    void without_an_index_the_remedy_is_named() {
        assertThat(MomentIndex.isBuilt(episode)).isFalse();
        assertThatThrownBy(() -> found("butter"))
                .isInstanceOf(BadInput.class)
                .hasMessage(episode + ": there is no index yet; make it with: index");
    }

    @Test
    void an_index_of_the_folder_where_one_stands_is_told_by_that() {
        assertThat(IndexPlace.in(Path.of("")).unreadable(new IOException("damaged")))
                .hasMessage("this folder: its index cannot be read; make it anew with: index");
    }

    @Test
    void a_damaged_index_is_a_sentence() throws IOException {
        build(said(0, "butter"));
        try (var files = Files.list(episode.resolve(".misecue/index"))) {
            for (Path file : files.toList()) {
                Files.write(file, new byte[] {1});
            }
        }
        assertThatThrownBy(() -> found("butter"))
                .isInstanceOf(BadInput.class)
                .hasMessage(episode + ": its index cannot be read; make it anew with: index");
        assertThatCode(() -> build(said(0, "butter"))).doesNotThrowAnyException();
        assertThat(found("butter")).hasSize(1);
    }

    @Test
    void an_unwritable_place_is_a_sentence() throws IOException {
        Files.writeString(episode.resolve(".misecue"), "a file where a folder should be");
        assertThatThrownBy(() -> build(said(0, "butter")))
                .isInstanceOf(BadInput.class)
                .hasMessage(episode + ": its index cannot be written; check that .misecue is writable");
    }

    @Test
    void an_empty_episode_can_be_searched() {
        build();
        assertThat(MomentIndex.find(episode, "butter", 5))
                .isEqualTo(new FindResult("butter", List.of(), Optional.empty(), false));
    }

    @Test
    void the_same_input_gives_the_same_result() throws IOException {
        List<FindResult> results = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            MomentIndex.build(episode, TestKitchen.passages(), TestKitchen.OTHER_NAMES);
            results.add(MomentIndex.find(episode, "the caramel", 9));
        }
        assertThat(results.get(0)).isEqualTo(results.get(1));
    }

    private void build(Passage... passages) {
        MomentIndex.build(episode, List.of(passages), List.of());
    }

    private List<Hit> found(String query) {
        return MomentIndex.find(episode, query, 5).hits();
    }

    private Hit only(String query) {
        List<Hit> hits = found(query);
        assertThat(hits).hasSize(1);
        return hits.get(0);
    }

    private static Passage cue(int start, int end, Word... words) {
        String text = String.join(" ", List.of(words).stream().map(Word::text).toList());
        return new Passage(
                Passage.Kind.NARRATION,
                "main.vtt",
                seconds(start),
                seconds(end),
                text,
                0,
                Optional.empty(),
                List.of(words),
                List.of(),
                Set.of());
    }

    private static Word word(String text, long millis) {
        return new Word(text, Duration.ofMillis(millis));
    }

    private static Duration seconds(int seconds) {
        return Duration.ofSeconds(seconds);
    }

    /** Fails when the writer has already taken the passages. */
    private static final class Breaks extends AbstractSet<String> {
        @Override
        public Iterator<String> iterator() {
            throw new IllegalStateException("died half way");
        }

        @Override
        public int size() {
            return 1;
        }
    }
}
