package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class NarrationReaderTest {

    private static final String STAMPED = "[0:05] weigh the flour\n[0:09] and whisk\n";
    private static final String WEB_VTT = "WEBVTT\n\n00:05.000 --> 00:09.000\nweigh the flour\n";
    private static final String SUB_RIP = "1\n00:00:05,000 --> 00:00:09,000\nweigh the flour\n";
    private static final String JSON = "{\"segments\": [{\"start\": 5, \"end\": 9, \"text\": \" weigh the flour\"}]}";

    @TempDir
    Path folder;

    @Test
    void every_format_gives_the_same_cue() {
        for (String text : List.of(STAMPED, WEB_VTT, SUB_RIP, JSON)) {
            Cue cue = read(text).cues().get(0);
            assertThat(TestCues.line(cue)).isEqualTo("5.0-9.0 weigh the flour");
        }
    }

    @Test
    void content_goes_before_the_name() throws IOException {
        Path file = Files.writeString(folder.resolve("main.vtt"), SUB_RIP);
        assertThat(NarrationReader.read(file, "narration/main.vtt").cues()).hasSize(1);
    }

    @Test
    void the_source_is_kept_as_given() {
        assertThat(read(STAMPED).source()).isEqualTo("narration/main.txt");
    }

    @ParameterizedTest
    @CsvSource({"UTF-8, false", "UTF-8, true", "UTF-16LE, true", "UTF-16BE, true"})
    void unicode_is_read_with_and_without_a_byte_order_mark(String charset, boolean mark) {
        String text = (mark ? "\uFEFF" : "") + "[0:05] crème fraîche, ½ cup";
        Narration narration = read(text.getBytes(Charset.forName(charset)));
        assertThat(narration.cues().get(0).text()).isEqualTo("crème fraîche, ½ cup");
        assertThat(narration.notes()).isEmpty();
    }

    @Test
    void other_text_is_taken_for_windows_1252_and_says_so() {
        Narration narration = read("[0:05] crème – ½ cup".getBytes(Charset.forName("windows-1252")));
        assertThat(narration.cues().get(0).text()).isEqualTo("crème – ½ cup");
        assertThat(narration.notes()).hasSize(1);
        assertThat(narration.notes().get(0))
                .hasToString("narration/main.txt: the file is not UTF-8 and was read as Windows-1252;"
                        + " save it as UTF-8 to be sure");
    }

    @Test
    void cues_are_put_in_order_of_time() {
        Narration narration = read("[0:30] second\n[0:05] first\n");
        assertThat(narration.cues()).extracting(Cue::text).containsExactly("first", "second");
        assertThat(narration.notes()).extracting(note -> note.place().line()).containsExactly(2);
    }

    @Test
    void many_broken_cues_give_few_notes() {
        Narration narration = read("[0:01] fine\n" + "[0:61] broken\n".repeat(500));
        assertThat(narration.notes()).hasSize(21);
        assertThat(narration.notes().get(20)).hasToString("narration/main.txt: and 480 more of the same kind");
    }

    @Test
    void a_binary_file_is_refused() {
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13};
        assertThatThrownBy(() -> read(png)).isInstanceOf(BadInput.class).hasMessageContaining("binary file");
        byte[] noise = "[0:05] \u0001\u0002\u0003\u0004".getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> read(noise)).isInstanceOf(BadInput.class).hasMessageContaining("binary file");
    }

    @Test
    void a_huge_file_is_refused_unread() throws IOException {
        Path file = folder.resolve("long.txt");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(50L * 1024 * 1024);
        }
        assertThatThrownBy(() -> NarrationReader.read(file, "narration/long.txt"))
                .isInstanceOf(BadInput.class)
                .hasMessage("narration/long.txt: expected a narration of at most 20 MB, but this file is larger;"
                        + " cut it into several files");
    }

    @Test
    void a_missing_file_is_named() {
        assertThatThrownBy(() -> NarrationReader.read(folder.resolve("no.vtt"), "narration/no.vtt"))
                .isInstanceOf(BadInput.class)
                .hasMessage("narration/no.vtt: there is no such file; check its name");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|narration/main.txt: no cue with words can be read as text with times in brackets",
                "weigh the flour|narration/main.txt:1: no cue with words can be read as text with times in brackets",
                "[0:75] weigh|narration/main.txt:1: no cue with words can be read as text with times in brackets",
                "WEBVTT|narration/main.txt: no cue with words can be read as WebVTT",
                "{\"a\": 1}|narration/main.txt: no cue with words can be read as recogniser JSON",
                "{\"segments\": [|narration/main.txt:1:15: the JSON is damaged or cut off here",
                "1:5 --> x|narration/main.txt:1: no cue with words can be read as SubRip",
            })
    void without_a_readable_cue_the_place_and_the_remedy_are_named(String text, String message) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(BadInput.class).hasMessageStartingWith(message);
    }

    @Test
    void an_unknown_kind_of_text_is_told_what_was_expected() {
        byte[] text = "weigh the flour".getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> NarrationReader.read(text, "narration/main.md"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected WebVTT, SubRip, TTML, recogniser JSON or lines that begin with a time");
    }

    private static Narration read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Narration read(byte[] bytes) {
        return NarrationReader.read(bytes, "narration/main.txt");
    }
}
