package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;

class JobsTest {

    private static final LocalDateTime FIRST_SHOT = LocalDateTime.parse("2026-03-10T10:00");

    private static final List<Job> JOBS = PrepPlanner.plan(
                    Swirls.recipe().asWritten(),
                    Pantry.standard(),
                    PrepSettings.standard().withFirstShot(FIRST_SHOT))
            .jobs();

    /** Bench times: butter to soft 1–2 h as a block, eggs 30 min, oven 15–30 min (common practice, no source). */
    @ParameterizedTest
    @CsvSource({
        "Take the butter out of the fridge,               PT2H,   bowls 7 and 11, 2026-03-10T08:05",
        "Take the eggs out of the fridge,                  PT30M,  bowl 6,         2026-03-10T09:35",
        "Heat the oven to 180 °C (fan 160 °C),            PT30M,  step 6,         2026-03-10T11:37",
    })
    void a_job_says_what_how_long_before_for_what_and_when(
            String what, Duration before, String forWhat, LocalDateTime at) {
        assertThat(JOBS)
                .filteredOn(job -> job.what().equals(what))
                .singleElement()
                .satisfies(job -> {
                    assertThat(job.before()).isEqualTo(before);
                    assertThat(job.forWhat()).startsWith(forWhat);
                    assertThat(job.at()).contains(at);
                });
    }

    @Test
    void the_earliest_job_comes_first() {
        assertThat(JOBS).extracting(job -> job.at().orElseThrow()).isSorted();
    }

    @Test
    void every_job_has_a_reason_and_a_source() {
        assertThat(JOBS).hasSizeGreaterThan(4).allSatisfy(job -> {
            assertThat(job.why()).endsWith(".");
            assertThat(job.source()).isNotBlank();
        });
    }

    @Test
    void without_a_first_shot_there_is_no_clock_time() {
        PrepPlan plan = PrepPlanner.plan(Swirls.recipe().asWritten(), Pantry.standard(), PrepSettings.standard());
        assertThat(plan.jobs())
                .extracting(Job::what)
                .containsExactlyElementsOf(JOBS.stream().map(Job::what).toList());
        assertThat(plan.jobs()).allSatisfy(job -> assertThat(job.at()).isEmpty());
    }

    @Test
    void a_second_take_moves_what_comes_later() {
        PrepPlan twice = PrepPlanner.plan(
                Swirls.recipe().asWritten(),
                Pantry.standard(),
                PrepSettings.standard().withTakes(2).withFirstShot(FIRST_SHOT));
        assertThat(twice.jobs())
                .filteredOn(job -> job.what().startsWith("Heat the oven"))
                .singleElement()
                .satisfies(job -> assertThat(job.at()).contains(LocalDateTime.parse("2026-03-10T12:24")));
    }
}
