package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class BrowsersTest {

    @TempDir
    Path folder;

    /** The same table is shown to Chromium by the desk's tests. */
    @ParameterizedTest
    @CsvSource(nullValues = "plays", textBlock = """
            H264_AAC_MP4,   plays
            H264_SIDEWAYS,  plays
            SOUND_ONLY_MP4, plays
            VP8_OPUS_WEBM,  plays
            VP9_OPUS_WEBM,  plays
            AV1_OPUS_WEBM,  plays
            H264_MP3_MP4,   plays
            H264_AAC_MOV,   its file is neither MP4 nor WebM
            PRORES_PCM_MOV, its file is neither MP4 nor WebM
            H264_AAC_MKV,   its file is neither MP4 nor WebM
            MPEG4_AAC_MP4,  its picture is mpeg4
            AV1_TEN_BIT,    its picture is av1 with finer colour than browsers decode
            H264_AC3_MP4,   its sound is ac3
            LATE_PICTURE,   its picture does not begin when its file does
            """)
    void browsers_play_what_they_decode(CameraFile kind, String objection) {
        Path film = kind.shoot(folder);

        assertThat(Browsers.objection(film).orElse(null)).isEqualTo(objection);
    }

    @Test
    void what_is_no_film_is_told_so() throws IOException {
        Path film = Files.writeString(folder.resolve("film.mp4"), "200 g flour");

        assertThatThrownBy(() -> Browsers.objection(film))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(film + ": this is not a film that can be read");
    }
}
