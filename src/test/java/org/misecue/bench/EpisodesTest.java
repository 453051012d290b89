package org.misecue.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.misecue.spoken.Mechanism;

/**
 * Thirty-two invented episodes by as many speakers, with the truth about each written quantity beside them. They were
 * written without sight of the program, and some of what they taught it is now in its rules: so the bounds here are the
 * level that must not be lost, and no promise for a speaker whom nobody has heard yet.
 */
class EpisodesTest {

    private static final Score SCORE = Score.of(
            EpisodeCase.below(Path.of("src/test/resources/org/misecue/compare/episodes")),
            EnumSet.allOf(Mechanism.class));

    @Test
    void every_episode_is_compared() {
        assertThat(SCORE.failures()).isEmpty();
        assertThat(SCORE.cases()).hasSize(32);
    }

    @Test
    void written_quantities_get_their_verdict_as_often_as_before() {
        assertThat(Score.accuracy(SCORE.written())).isGreaterThanOrEqualTo(0.9);
        assertThat(Score.accuracy(SCORE.settings())).isGreaterThanOrEqualTo(0.91);
    }

    @Test
    void nothing_that_differs_is_reported_as_agreeing() {
        assertThat(SCORE.dangerous()).isEmpty();
    }

    @Test
    void the_moments_shown_are_mostly_the_deciding_ones() {
        assertThat(SCORE.evidence()).isGreaterThanOrEqualTo(0.93);
    }
}
