package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AAC;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_AV1;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_H264;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_MP3;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_OPUS;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VORBIS;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VP8;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_VP9;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_get_name;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUVJ420P;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avformat.AVStream;

/**
 * What browsers play as it is: the Chromium, Firefox and Safari of 2025.
 *
 * <p>Containers by MDN, "Media container formats": MP4 everywhere, WebM with VP8 or VP9 and Vorbis or Opus, QuickTime only in
 * some. Codecs in MP4, AV1 in WebM, and that pictures must be 8-bit 4:2:0, are from memory; a test asks Chromium. Safari plays
 * AV1 only on machines that decode it in hardware, so a player still has to listen for a refusal.
 */
public final class Browsers {

    private enum Container {
        MP4(Set.of(AV_CODEC_ID_H264, AV_CODEC_ID_AV1), Set.of(AV_CODEC_ID_AAC, AV_CODEC_ID_MP3, AV_CODEC_ID_OPUS)),
        WEBM(Set.of(AV_CODEC_ID_VP8, AV_CODEC_ID_VP9, AV_CODEC_ID_AV1), Set.of(AV_CODEC_ID_OPUS, AV_CODEC_ID_VORBIS));

        final Set<Integer> pictures;
        final Set<Integer> sounds;

        Container(Set<Integer> pictures, Set<Integer> sounds) {
            this.pictures = pictures;
            this.sounds = sounds;
        }
    }

    /** Full range is the camera's word for the same samples. */
    private static final Set<Integer> EIGHT_BIT_420 = Set.of(AV_PIX_FMT_YUV420P, AV_PIX_FMT_YUVJ420P);

    private Browsers() {}

    /**
     * Why a browser would not play the film as it is, such as "its picture is prores"; empty where all of them do.
     *
     * @throws org.misecue.notice.BadInput if there is no such film, or it is empty, cut off, or no film at all
     */
    public static Optional<String> objection(Path film) {
        try (Reel reel = Reel.open(film)) {
            return container(reel, film)
                    .map(container -> Stream.concat(
                                    reel.streams().stream()
                                            .filter(stream -> !Reel.isCover(stream))
                                            .flatMap(stream -> codec(stream, container).stream()),
                                    clock(reel).stream())
                            .findFirst())
                    .orElse(Optional.of("its file is neither MP4 nor WebM"));
        }
    }

    private static Optional<Container> container(Reel reel, Path film) {
        String format = reel.format();
        if (format.startsWith("mov,mp4")) {
            return reel.tag("major_brand")
                    .filter(brand -> !brand.equals("qt  "))
                    .map(brand -> Container.MP4);
        }
        return format.startsWith("matroska") && DocType.isWebm(film) ? Optional.of(Container.WEBM) : Optional.empty();
    }

    private static Optional<String> codec(AVStream stream, Container container) {
        AVCodecParameters codec = stream.codecpar();
        String name = avcodec_get_name(codec.codec_id()).getString();
        if (codec.codec_type() == AVMEDIA_TYPE_AUDIO && !container.sounds.contains(codec.codec_id())) {
            return Optional.of("its sound is " + name);
        }
        if (codec.codec_type() != AVMEDIA_TYPE_VIDEO) {
            return Optional.empty();
        }
        if (!container.pictures.contains(codec.codec_id())) {
            return Optional.of("its picture is " + name);
        }
        return EIGHT_BIT_420.contains(codec.format())
                ? Optional.empty()
                : Optional.of("its picture is " + name + " with finer colour than browsers decode");
    }

    /** A browser's clock starts with the file's, the film's with the first picture. */
    private static Optional<String> clock(Reel reel) {
        return reel.origin().abs().compareTo(Playhead.ROUNDING) <= 0
                ? Optional.empty()
                : Optional.of("its picture does not begin when its file does");
    }
}
