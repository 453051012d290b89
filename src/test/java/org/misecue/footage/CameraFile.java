package org.misecue.footage;

import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.IntToLongFunction;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;

/** Small films in the forms that cameras, telephones and programs write; each frame shows its number. */
public enum CameraFile {
    H264_AAC_MP4("mp4", recorder -> {}),
    H264_SIDEWAYS("mp4", recorder -> recorder.setDisplayRotation(90)),
    SOUND_ONLY_MP4("mp4", recorder -> {}),
    VP8_OPUS_WEBM("webm", recorder -> web(recorder, "libvpx", avcodec.AV_CODEC_ID_VP8)),
    VP9_OPUS_WEBM("webm", recorder -> web(recorder, "libvpx-vp9", avcodec.AV_CODEC_ID_VP9)),
    AV1_OPUS_WEBM("webm", recorder -> {
        web(recorder, "libaom-av1", avcodec.AV_CODEC_ID_AV1);
        recorder.setVideoOption("cpu-used", "8");
    }),
    H264_MP3_MP4("mp4", recorder -> {
        recorder.setAudioCodec(avcodec.AV_CODEC_ID_MP3);
        recorder.setAudioCodecName("libmp3lame");
        recorder.setSampleRate(48000);
    }),
    H264_AAC_MOV("mov", recorder -> recorder.setFormat("mov")),
    PRORES_PCM_MOV("mov", CameraFile::prores),
    H264_AAC_MKV("mkv", recorder -> {}),
    MPEG4_AAC_MP4("mp4", recorder -> {
        recorder.setVideoCodec(avcodec.AV_CODEC_ID_MPEG4);
        recorder.setVideoCodecName("mpeg4");
    }),
    AV1_TEN_BIT("webm", recorder -> {
        web(recorder, "libaom-av1", avcodec.AV_CODEC_ID_AV1);
        recorder.setVideoOption("cpu-used", "8");
        recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P10);
    }),
    H264_AC3_MP4("mp4", recorder -> {
        recorder.setAudioCodec(avcodec.AV_CODEC_ID_AC3);
        recorder.setAudioCodecName("ac3");
        recorder.setSampleRate(48000);
    }),
    LATE_PICTURE("mp4", recorder -> {});

    private static final FrameRate PAL = new FrameRate(25, 1);
    private static final int FRAMES = 75;

    /** The ending of the file's name. */
    public final String ending;

    private final Consumer<FFmpegFrameRecorder> settings;

    CameraFile(String ending, Consumer<FFmpegFrameRecorder> settings) {
        this.ending = ending;
        this.settings = settings;
    }

    private static void web(FFmpegFrameRecorder recorder, String name, int codec) {
        recorder.setFormat("webm");
        recorder.setVideoCodec(codec);
        recorder.setVideoCodecName(name);
        recorder.setAudioCodec(avcodec.AV_CODEC_ID_OPUS);
        recorder.setAudioCodecName("libopus");
        recorder.setSampleRate(48000);
    }

    static void prores(FFmpegFrameRecorder recorder) {
        recorder.setFormat("mov");
        recorder.setVideoCodec(avcodec.AV_CODEC_ID_PRORES);
        recorder.setVideoCodecName("prores_ks");
        recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV422P10);
        recorder.setAudioCodec(avcodec.AV_CODEC_ID_PCM_S16LE);
        recorder.setAudioCodecName("pcm_s16le");
    }

    /** Three seconds of it. */
    public Path shoot(Path folder) {
        int late = this == LATE_PICTURE ? 1_000_000 : 0;
        IntToLongFunction micros = number -> late + 40_000L * number;
        return TestFilm.write(
                folder.resolve(name() + "." + ending),
                this == SOUND_ONLY_MP4 ? 0 : FRAMES,
                PAL,
                true,
                micros,
                settings);
    }

    /** The number that a picture shows, on its 8 bars. */
    public static int numberIn(Path png) throws java.io.IOException {
        return TestFilm.numberIn(png);
    }
}
