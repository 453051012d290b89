package org.misecue.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;

class CaptionFileTest {

    private static final List<Caption> CAPTIONS = List.of(
            new Caption(
                    Duration.ofMillis(1_500),
                    Duration.ofMillis(4_699),
                    Optional.of("Ines"),
                    List.of("Butter & eggs,", "175 g < 200 g")),
            new Caption(
                    Duration.ofHours(1),
                    Duration.ofHours(1).plusMillis(2_007),
                    Optional.of("Ines"),
                    List.of("a --> b")));

    /** W3C WebVTT: the signs that have a meaning are escaped, and no text holds an arrow. */
    @Test
    void writes_web_vtt() {
        assertThat(CaptionFile.webVtt(CAPTIONS)).isEqualTo("""
                WEBVTT

                1
                00:00:01.500 --> 00:00:04.699
                <v Ines>Butter &amp; eggs,
                175 g &lt; 200 g

                2
                01:00:00.000 --> 01:00:02.007
                <v Ines>a --&gt; b
                """);
    }

    @Test
    void writes_sub_rip() {
        assertThat(CaptionFile.subRip(CAPTIONS)).isEqualTo("""
                1
                00:00:01,500 --> 00:00:04,699
                Ines: Butter & eggs,
                175 g ‹ 200 g

                2
                01:00:00,000 --> 01:00:02,007
                a --› b

                """);
    }

    @Test
    void what_is_written_can_be_read_again(@TempDir Path folder) throws IOException {
        for (String ending : List.of("vtt", "srt")) {
            Path file = folder.resolve("captions." + ending);
            Files.writeString(file, ending.equals("vtt") ? CaptionFile.webVtt(CAPTIONS) : CaptionFile.subRip(CAPTIONS));
            Narration read = NarrationReader.read(file, "captions." + ending);
            assertThat(read.notes()).isEmpty();
            assertThat(read.cues()).extracting(cue -> cue.start().toMillis()).containsExactly(1_500L, 3_600_000L);
            assertThat(read.cues().get(0).text()).contains("175 g");
        }
    }
}
