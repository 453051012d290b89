package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avformat.AVSEEK_FLAG_BACKWARD;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_seek_frame;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.misecue.notice.BadInput;

/** Where a film ends by its last pictures and sounds, from the last key frame on; nothing is decoded. */
final class Tail {

    private Tail() {}

    /** On the file's clock; empty where nothing can be read there. */
    static Optional<Duration> end(Path film) {
        AVPacket packet = av_packet_alloc();
        Optional<Duration> end = Optional.empty();
        try (Reel reel = Reel.open(film)) {
            if (av_seek_frame(reel.context(), -1, reel.context().duration(), AVSEEK_FLAG_BACKWARD) < 0) {
                return end;
            }
            while (av_read_frame(reel.context(), packet) >= 0) {
                AVStream stream = reel.context().streams(packet.stream_index());
                if (isSeenOrHeard(stream) && packet.pts() != AV_NOPTS_VALUE) {
                    Duration ends =
                            Ffmpeg.time(packet.pts(), stream.time_base()).plus(lasts(packet, stream));
                    end = end.filter(last -> last.compareTo(ends) >= 0).or(() -> Optional.of(ends));
                }
                av_packet_unref(packet);
            }
            return end;
        } catch (BadInput e) {
            return Optional.empty();
        } finally {
            av_packet_free(packet);
        }
    }

    private static boolean isSeenOrHeard(AVStream stream) {
        int kind = stream.codecpar().codec_type();
        return kind == AVMEDIA_TYPE_AUDIO || kind == AVMEDIA_TYPE_VIDEO && !Reel.isCover(stream);
    }

    /** A picture that does not say so lasts as long as most do. */
    private static Duration lasts(AVPacket packet, AVStream stream) {
        AVRational rate = stream.avg_frame_rate();
        return packet.duration() <= 0 && rate.num() > 0 && rate.den() > 0
                ? new FrameRate(rate.num(), rate.den()).startOf(1)
                : Ffmpeg.time(packet.duration(), stream.time_base());
    }
}
