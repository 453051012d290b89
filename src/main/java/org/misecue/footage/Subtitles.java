package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_ALL;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_get_name;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_SUBTITLE;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_get;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.misecue.notice.BadInput;

/** The subtitles inside a film. Their packets hold the text itself, so that nothing has to be decoded. */
public final class Subtitles {

    /** A text longer than this is none that anybody can read in a film. */
    private static final int LONGEST = 1 << 16;

    private static final int MOST = 100_000;

    private Subtitles() {}

    /**
     * The subtitle tracks, in the film's order.
     *
     * @throws BadInput if the film cannot be read
     */
    public static List<SubtitleTrack> tracks(Path film) {
        try (Reel reel = Reel.open(film)) {
            return reel.streams().stream()
                    .filter(stream -> stream.codecpar().codec_type() == AVMEDIA_TYPE_SUBTITLE)
                    .map(Subtitles::track)
                    .toList();
        }
    }

    private static SubtitleTrack track(AVStream stream) {
        int codec = stream.codecpar().codec_id();
        AVDictionaryEntry language = av_dict_get(stream.metadata(), "language", null, 0);
        return new SubtitleTrack(
                stream.index() + 1,
                avcodec_get_name(codec).getString(),
                language == null || language.value().getString().equals("und")
                        ? ""
                        : language.value().getString(),
                SubtitlePayload.of(codec).markup());
    }

    /**
     * What stands in a track of text, in the order of the film; blank texts, which only clear the picture, are left out.
     *
     * @throws BadInput if the film cannot be read, or holds more than any film does
     */
    public static List<Subtitle> read(Path film, SubtitleTrack track) {
        AVPacket packet = av_packet_alloc();
        try (Reel reel = Reel.open(film)) {
            return read(reel, reel.context().streams(track.number() - 1), packet);
        } finally {
            av_packet_free(packet);
        }
    }

    private static List<Subtitle> read(Reel reel, AVStream stream, AVPacket packet) {
        SubtitlePayload payload = SubtitlePayload.of(stream.codecpar().codec_id());
        for (AVStream other : reel.streams()) {
            if (other.index() != stream.index()) {
                other.discard(AVDISCARD_ALL); // most containers then leave them unread
            }
        }
        Duration origin = reel.origin();
        List<Subtitle> subtitles = new ArrayList<>();
        while (av_read_frame(reel.context(), packet) >= 0) {
            if (packet.stream_index() == stream.index() && packet.size() > 0 && packet.size() <= LONGEST) {
                subtitle(packet, stream, payload, origin).ifPresent(subtitles::add);
            }
            av_packet_unref(packet);
            if (subtitles.size() > MOST) {
                throw new BadInput(
                        reel.place(),
                        "the film holds more than 100,000 subtitles, which no film does; put a narration file beside it");
            }
        }
        return List.copyOf(subtitles);
    }

    private static Optional<Subtitle> subtitle(
            AVPacket packet, AVStream stream, SubtitlePayload payload, Duration origin) {
        if (packet.pts() == AV_NOPTS_VALUE) {
            return Optional.empty();
        }
        byte[] bytes = new byte[packet.size()];
        packet.data().get(bytes);
        String text = payload.text(bytes);
        Duration from = Ffmpeg.time(packet.pts(), stream.time_base()).minus(origin);
        Optional<Duration> to = Optional.of(Ffmpeg.time(packet.duration(), stream.time_base()))
                .filter(lasts -> !lasts.isZero() && isSound(lasts))
                .map(from::plus);
        return text.isBlank() || !isSound(from) ? Optional.empty() : Optional.of(new Subtitle(from, to, text));
    }

    /** Damaged films have times beyond all films. */
    private static boolean isSound(Duration time) {
        return time.abs().compareTo(Lane.FOREVER) < 0;
    }
}
