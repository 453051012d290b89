package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.misecue.notice.BadInput;

class TemplateReaderProperties {

    /** Whatever is torn out of a template or put into it, it is read or refused in a sentence. */
    @Property(tries = 400)
    void a_damaged_template_is_read_or_refused_in_a_sentence(
            @ForAll @IntRange(max = 600) int from,
            @ForAll @IntRange(max = 40) int length,
            @ForAll @StringLength(max = 6) String by)
            throws IOException {
        String good = Files.readString(Path.of("shot-templates/cream.yaml"));
        int start = Math.min(from, good.length());
        String text = good.substring(0, start) + by + good.substring(Math.min(start + length, good.length()));
        try {
            assertThat(TemplateReader.read("t.yaml", text).coverage()).isNotEmpty();
        } catch (BadInput e) {
            assertThat(e).hasMessageStartingWith("t.yaml").message().matches("(?s).*[.?]");
        } catch (RuntimeException e) {
            fail("not a sentence: " + text, e);
        }
    }
}
