package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.time.Duration;
import org.misecue.notice.BadInput;

/** Whatever the bytes: a narration that holds what it promises, or a sentence. */
class NarrationFuzzTest {

    @FuzzTest
    void any_bytes_are_a_narration_or_bad_input(byte[] bytes) {
        Narration narration;
        try {
            narration = NarrationReader.read(bytes, "main");
        } catch (BadInput e) {
            assertThat(e).hasMessageStartingWith("main");
            return;
        }
        assertThat(narration.cues()).isNotEmpty();
        Duration last = Duration.ZERO;
        for (Cue cue : narration.cues()) {
            assertThat(cue.start()).isGreaterThanOrEqualTo(last);
            assertThat(cue.end()).isGreaterThan(cue.start());
            assertThat(cue.words()).isNotEmpty();
            last = cue.start();
            Duration word = cue.start();
            for (Word next : cue.words()) {
                assertThat(next.text()).isNotBlank();
                assertThat(next.at()).isBetween(word, cue.end());
                word = next.at();
            }
        }
    }
}
