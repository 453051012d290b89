package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CertaintyTest {

    /** The figures are those of {@link Certainty}; a score of 4.5 is just enough, from 8 on there is no doubt of the place. */
    @ParameterizedTest(name = "score {0}, unit assumed {1}, hedged {2}, contradicted {3}, corrected late {4}: {5} %")
    @CsvSource(textBlock = """
        12,   false, false, false, false, 100, false
        8,    false, false, false, false, 100, false
        6.25, false, false, false, false,  75, false
        4.5,  false, false, false, false,  50, true
        1,    false, false, false, false,  25, true
        -20,  false, false, false, false,  25, true
        12,   true,  false, false, false,  85, false
        12,   false, true,  false, false,  90, false
        12,   false, false, true,  false,  70, false
        12,   false, false, false, true,   85, false
        12,   true,  true,  false, true,   60, false
        12,   true,  false, true,  false,  55, true
        6.25, true,  false, false, true,   45, true
        1,    true,  true,  true,  true,    5, true
        """)
    void weighs_the_grounds_of_what_was_said(
            double score,
            boolean assumedUnit,
            boolean hedged,
            boolean contradicted,
            boolean correctedLate,
            int percent,
            boolean low) {
        Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
        Map.of(
                        Doubt.ASSUMED_UNIT, assumedUnit,
                        Doubt.HEDGED, hedged,
                        Doubt.CONTRADICTED, contradicted,
                        Doubt.CORRECTED_LATE, correctedLate)
                .forEach((doubt, there) -> {
                    if (there) {
                        doubts.add(doubt);
                    }
                });
        Confidence confidence = Certainty.of(new Grounds(score, doubts));
        assertThat(confidence.percent()).isEqualTo(percent);
        assertThat(confidence.isLow()).isEqualTo(low);
    }

    @ParameterizedTest(name = "{0} amounts nearby without a home: {1} %")
    @CsvSource({"0, 90, false", "1, 50, true", "2, 40, true", "40, 5, true"})
    void doubts_silence_where_amounts_nearby_found_no_home(int strays, int percent, boolean low) {
        assertThat(Certainty.ofSilence(strays).percent()).isEqualTo(percent);
        assertThat(Certainty.ofSilence(strays).isLow()).isEqualTo(low);
    }
}
