package org.misecue.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Moments of which somebody remembers the sense and not the words; the talk is invented. */
class HalfRememberedTest {

    @TempDir
    Path episode;

    @BeforeEach
    void build() {
        List<Passage> passages = new ArrayList<>();
        passages.add(said(5, 0, "today it is bananas and there is plum jam between two layers"));
        passages.add(said(40, 1, "here are the bananas very spotty ones"));
        passages.add(said(62, 1, "now mash those up with a fork"));
        passages.add(said(90, 2, "baking powder goes in for a cake this size"));
        passages.add(said(120, 2, "fold in the flower gently"));
        passages.add(said(160, 3, "poke it all over while it is hot"));
        passages.add(said(190, 3, "the plum jam goes on the layers"));
        passages.add(said(260, 4, "butter the pan and put in cling film"));
        passages.add(Passage.step(1, "Mash the bananas.", "recipe.md", at(35), at(85)));
        passages.add(Passage.step(2, "Fold in the flour.", "recipe.md", at(85), at(150)));
        passages.add(
                Passage.step(3, "Poke the cake and spread the jam between layers.", "recipe.md", at(150), at(250)));
        passages.add(Passage.shown("180 g rye flour / 2 eggs", 2, "footage/take-1.mp4", at(100), at(104)));
        MomentIndex.build(
                episode, passages, List.of(Set.of("mashed banana", "banana"), Set.of("cling film", "plastic wrap")));
    }

    @ParameterizedTest
    @CsvSource({
        // what is done, not where its thing was named
        "mashing bananas, 62",
        "when do we mash the bananas up with a fork, 62",
        // during the step that has all of it, rather than something that sounds alike
        "poking cake, 160",
        // in the step, not where it is announced
        "plum jam layers, 190",
        "fold flour, 120",
        "plastic wrap in pan, 260",
        // in quotes, and nobody said just that
        "'\"when does she mash it\"', 62",
    })
    void the_moment_comes_first(String query, long second) {
        assertThat(found(query).get(0).at()).isBetween(at(second), at(second + 9));
    }

    @Test
    void writing_in_the_picture_is_found_on_the_film() {
        Hit hit = found("rye flour").get(0);
        assertThat(hit.kind()).isEqualTo(Passage.Kind.SHOWN);
        assertThat(hit.source()).isEqualTo("footage/take-1.mp4");
        assertThat(FindText.of(MomentIndex.find(episode, "rye flour", 1), false))
                .contains("shown · step 2 · footage/take-1.mp4");
    }

    @Test
    void the_steps_come_last() {
        List<Passage.Kind> kinds = found("mash bananas").stream().map(Hit::kind).toList();
        assertThat(kinds).contains(Passage.Kind.STEP);
        assertThat(kinds.indexOf(Passage.Kind.STEP)).isGreaterThan(kinds.lastIndexOf(Passage.Kind.NARRATION));
    }

    private List<Hit> found(String query) {
        return MomentIndex.find(episode, query, 10).hits();
    }

    private static Duration at(long second) {
        return Duration.ofSeconds(second);
    }

    private static Passage said(int start, int step, String text) {
        return Talk.said(start, text, step, Optional.empty());
    }
}
