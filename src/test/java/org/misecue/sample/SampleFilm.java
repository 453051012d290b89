package org.misecue.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ShortBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.junit.jupiter.api.Test;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;

/**
 * Makes {@code sample-project/footage/take-1.mp4}. No part of the usual tests; run it by hand after changing the
 * narration or {@code expected.yaml}: {@code mvn test -Dtest=SampleFilm}. On one machine the same input gives the same
 * bytes; elsewhere the letters may be drawn a little differently.
 */
class SampleFilm {

    static final int WIDTH = 640;
    static final int HEIGHT = 360;
    static final int FRAMES_PER_SECOND = 5;
    private static final int KEY_FRAME_EVERY_SECONDS = 15;
    private static final int PICTURE_BITS = 38_000;
    private static final int SOUND_BITS = 16_000;
    private static final long MOST_BYTES = 3_000_000;

    private static final Path NARRATION = Path.of("sample-project/narration/main.vtt");
    private static final Path FILM = Path.of("sample-project/footage/take-1.mp4");

    @Test
    void is_made_to_match_the_narration() throws IOException {
        Narration narration = NarrationReader.read(NARRATION, "narration/main.vtt");
        Duration end = narration.cues().get(narration.cues().size() - 1).end();
        int seconds = Math.toIntExact(end.plusMillis(999).toSeconds());
        Files.createDirectories(FILM.getParent());
        Path unfinished = FILM.resolveSibling("take-1.unfinished.mp4");
        record(unfinished, SampleTimeline.read(), SampleVoice.speak(narration, seconds), seconds);
        Files.move(unfinished, FILM, StandardCopyOption.REPLACE_EXISTING);

        assertThat(FILM).isRegularFile();
        assertThat(Files.size(FILM)).isLessThan(MOST_BYTES);
    }

    private static void record(Path file, SampleTimeline timeline, short[] voice, int seconds) throws IOException {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), WIDTH, HEIGHT, 1)) {
            recorder.setFormat("mp4");
            recorder.setOption("fflags", "+bitexact");
            recorder.setOption("movflags", "+faststart");
            recorder.setVideoCodec(avcodec.AV_CODEC_ID_H264);
            recorder.setVideoCodecName("libopenh264");
            recorder.setVideoOption("threads", "1");
            recorder.setVideoOption("flags", "+bitexact");
            recorder.setVideoOption("allow_skip_frames", "0");
            recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
            recorder.setFrameRate(FRAMES_PER_SECOND);
            recorder.setGopSize(FRAMES_PER_SECOND * KEY_FRAME_EVERY_SECONDS);
            recorder.setVideoBitrate(PICTURE_BITS);
            recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
            recorder.setAudioOption("flags", "+bitexact");
            recorder.setSampleRate(SampleVoice.RATE);
            recorder.setAudioBitrate(SOUND_BITS);
            recorder.start();
            int samplesPerFrame = SampleVoice.RATE / FRAMES_PER_SECOND;
            SampleScenes scenes = new SampleScenes(timeline);
            for (int number = 0; number < seconds * FRAMES_PER_SECOND; number++) {
                recorder.setTimestamp(number * 1_000_000L / FRAMES_PER_SECOND);
                recorder.record(frame(scenes.at(number)), avutil.AV_PIX_FMT_BGR24);
                recorder.recordSamples(
                        SampleVoice.RATE, 1, ShortBuffer.wrap(voice, number * samplesPerFrame, samplesPerFrame));
            }
            recorder.stop();
        }
    }

    private static Frame frame(BufferedImage image) {
        Frame frame = new Frame(WIDTH, HEIGHT, Frame.DEPTH_UBYTE, 3);
        byte[] pixels = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        ByteBuffer target = (ByteBuffer) frame.image[0];
        for (int y = 0; y < HEIGHT; y++) {
            target.put(y * frame.imageStride, pixels, y * WIDTH * 3, WIDTH * 3);
        }
        return frame;
    }
}
