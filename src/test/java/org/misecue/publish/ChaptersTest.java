package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.misecue.align.Alignment;
import org.misecue.align.StepSpan;
import org.misecue.recipe.Recipe;

/** The rules of the large hosts: first at 0:00, at least three, rising, ten seconds each (news report of the rule, 2020). */
class ChaptersTest {

    private final Recipe recipe = TestRecipes.pearCake();

    @Test
    void steps_become_chapters_behind_an_introduction() {
        assertThat(lines(new long[] {1, 35, 80}, new long[] {2, 80, 130}, new long[] {3, 130, 200}, new long[] {
                    4, 3725, 3800
                }))
                .containsExactly(
                        "0:00 Introduction",
                        "0:35 Heat the oven to 180 °C",
                        "1:20 Beat the butter and sugar",
                        "2:10 Beat in the eggs one at a time",
                        "1:02:05 Divide between the tins, lay the pears on top");
    }

    @Test
    void a_first_step_within_ten_seconds_starts_the_film() {
        assertThat(lines(new long[] {1, 9, 80}, new long[] {2, 80, 130}, new long[] {3, 130, 200}))
                .first()
                .isEqualTo("0:00 Heat the oven to 180 °C");
    }

    @Test
    void a_step_shorter_than_ten_seconds_shares_its_chapter() {
        assertThat(lines(new long[] {1, 20, 29}, new long[] {2, 29, 60}, new long[] {3, 60, 90}))
                .containsExactly(
                        "0:00 Introduction",
                        "0:20 Heat the oven to 180 °C; beat the butter and sugar",
                        "1:00 Beat in the eggs one at a time");
    }

    @Test
    void a_glimpse_of_a_later_step_does_not_start_its_chapter() {
        assertThat(lines(new long[] {4, 2, 6}, new long[] {1, 20, 60}, new long[] {2, 60, 90}, new long[] {4, 90, 200}))
                .containsExactly(
                        "0:00 Introduction",
                        "0:20 Heat the oven to 180 °C",
                        "1:00 Beat the butter and sugar",
                        "1:30 Divide between the tins, lay the pears on top");
    }

    @Test
    void fewer_than_three_are_left_out_and_the_note_says_so() {
        Chapters chapters = Chapters.of(recipe, TestRecipes.alignment(new long[] {1, 20, 60}), List.of());

        assertThat(chapters.chapters()).isEmpty();
        assertThat(chapters.notes())
                .extracting(Object::toString)
                .containsExactly(
                        "main.vtt: only 2 chapters of ten seconds could be made; hosts want 3, so there are none");
    }

    @Test
    void a_step_that_was_not_recognised_is_named() {
        Chapters chapters = Chapters.of(
                recipe,
                TestRecipes.alignment(new long[] {1, 20, 60}, new long[] {2, 60, 90}, new long[] {4, 90, 200}),
                List.of());

        assertThat(chapters.notes())
                .extracting(Object::toString)
                .containsExactly("recipe.md:22: step 3 was not recognised in the film and has no chapter");
    }

    @Test
    void two_narrations_need_to_be_told_apart() {
        Alignment alignment = new Alignment(List.of(
                new StepSpan(1, "a.vtt", Duration.ZERO, Duration.ofSeconds(50)),
                new StepSpan(2, "b.vtt", Duration.ZERO, Duration.ofSeconds(50))));

        assertThat(Chapters.of(recipe, alignment, List.of()).notes())
                .extracting(Object::toString)
                .containsExactly("narration: chapters need to know which narration is the film's, and there are 2:"
                        + " a.vtt, b.vtt; name one");
    }

    @Property(tries = 500)
    void the_rules_hold_whatever_was_recognised(@ForAll("alignments") Alignment alignment) {
        List<Chapter> chapters = Chapters.of(recipe, alignment, List.of()).chapters();
        Duration end = alignment.spans().stream()
                .map(StepSpan::end)
                .max(Duration::compareTo)
                .orElse(Duration.ZERO);

        if (!chapters.isEmpty()) {
            assertThat(chapters).hasSizeGreaterThanOrEqualTo(3);
            assertThat(chapters.get(0).start()).isZero();
            for (int i = 0; i < chapters.size(); i++) {
                Duration next = i + 1 < chapters.size() ? chapters.get(i + 1).start() : end;
                assertThat(next.minus(chapters.get(i).start())).isGreaterThanOrEqualTo(Duration.ofSeconds(10));
            }
        }
    }

    @Provide
    Arbitrary<Alignment> alignments() {
        Arbitrary<long[]> span = Arbitraries.longs().between(0, 4).tuple2().flatMap(step -> Arbitraries.longs()
                .between(1, 60_000)
                .map(length -> new long[] {step.get1(), length}));
        return span.list().ofMaxSize(12).map(rows -> {
            List<StepSpan> spans = new ArrayList<>();
            Duration at = Duration.ZERO;
            for (long[] row : rows) {
                Duration end = at.plusMillis(row[1]);
                spans.add(new StepSpan((int) row[0], "main.vtt", at, end));
                at = end;
            }
            return new Alignment(spans);
        });
    }

    private List<String> lines(long[]... rows) {
        return Chapters.of(recipe, TestRecipes.alignment(rows), List.of()).chapters().stream()
                .map(Chapter::toString)
                .toList();
    }
}
