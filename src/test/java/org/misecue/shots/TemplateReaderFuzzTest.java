package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.misecue.notice.BadInput;

class TemplateReaderFuzzTest {

    @FuzzTest
    void any_text_is_read_or_refused(byte[] bytes) {
        try {
            assertThat(TemplateReader.read("t.yaml", new String(bytes, StandardCharsets.UTF_8))
                            .technique())
                    .isNotEmpty();
        } catch (BadInput refused) {
            assertThat(refused).hasMessageStartingWith("t.yaml");
        }
    }
}
