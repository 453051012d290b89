package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.AV_PKT_DATA_DISPLAYMATRIX;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_side_data_get;
import static org.bytedeco.ffmpeg.global.avformat.AV_DISPOSITION_ATTACHED_PIC;
import static org.bytedeco.ffmpeg.global.avformat.av_find_best_stream;
import static org.bytedeco.ffmpeg.global.avformat.avformat_close_input;
import static org.bytedeco.ffmpeg.global.avformat.avformat_find_stream_info;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entries_count;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entry;
import static org.bytedeco.ffmpeg.global.avformat.avformat_open_input;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_free;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_get;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;
import static org.bytedeco.ffmpeg.global.avutil.av_display_rotation_get;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIndexEntry;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerPointer;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** An open film file. Only containers that cameras and recorders write are opened, and never a file they refer to. */
final class Reel implements AutoCloseable {

    private static final String CONTAINERS =
            "mov,mp4,m4a,3gp,3g2,mj2,matroska,webm,avi,mpegts,mpeg,mxf,wav,w64,aiff,mp3,aac,flac,ogg";

    private final Path film;
    private final AVFormatContext context;
    private @Nullable Duration length;

    private Reel(Path film, AVFormatContext context) {
        this.film = film;
        this.context = context;
    }

    /** Opens a film; what cannot be used is a {@link BadInput}. */
    static Reel open(Path film) {
        Place place = Place.of(film.toString());
        long size = size(film, place);
        Ffmpeg.ready(place);
        AVFormatContext context = new AVFormatContext(null);
        AVDictionary options = new AVDictionary(null);
        av_dict_set(options, "protocol_whitelist", "file", 0);
        av_dict_set(options, "format_whitelist", CONTAINERS, 0);
        int code = avformat_open_input(context, "file:" + film.toAbsolutePath(), null, options);
        av_dict_free(options);
        if (code < 0) {
            throw new BadInput(
                    place, "this is not a film that can be read, or its end is missing; copy it again from the camera");
        }
        Reel reel = new Reel(film, context);
        try {
            reel.checkWhole(size);
            return reel;
        } catch (BadInput e) {
            reel.close();
            throw e;
        }
    }

    private static long size(Path film, Place place) {
        try {
            if (!Files.isRegularFile(film)) {
                throw new BadInput(place, "there is no such film; check the name in footage/");
            }
            long size = Files.size(film);
            if (size == 0) {
                throw new BadInput(place, "the film is empty; copy it again from the camera");
            }
            if (Boxes.breakOff(film)) {
                throw new BadInput(place, "the film breaks off before its end; copy it again from the camera");
            }
            return size;
        } catch (IOException e) {
            throw new BadInput(place, "the film cannot be read; check its permissions", e);
        }
    }

    private void checkWhole(long size) {
        if (avformat_find_stream_info(context, (PointerPointer<?>) null) < 0 || context.nb_streams() == 0) {
            throw new BadInput(place(), "the film holds neither picture nor sound; copy it again from the camera");
        }
        for (AVStream stream : streams()) {
            int entries = avformat_index_get_entries_count(stream);
            if (entries > 0) {
                AVIndexEntry last = avformat_index_get_entry(stream, entries - 1);
                if (last.pos() + last.size() > size) {
                    throw new BadInput(place(), "the film breaks off before its end; copy it again from the camera");
                }
            }
        }
        if (context.duration() == AV_NOPTS_VALUE || context.duration() <= 0) {
            throw new BadInput(place(), "the film has no length; copy it again from the camera");
        }
    }

    Place place() {
        return Place.of(film.toString());
    }

    AVFormatContext context() {
        return context;
    }

    List<AVStream> streams() {
        return IntStream.range(0, context.nb_streams())
                .mapToObj(context::streams)
                .toList();
    }

    /** The main stream of a media type; a picture on the cover of a recording is none. */
    OptionalInt best(int mediaType) {
        int index = av_find_best_stream(context, mediaType, -1, -1, (AVCodec) null, 0);
        return index < 0 || isCover(context.streams(index)) ? OptionalInt.empty() : OptionalInt.of(index);
    }

    static boolean isCover(AVStream stream) {
        return (stream.disposition() & AV_DISPOSITION_ATTACHED_PIC) != 0;
    }

    /** FFmpeg's name for the kind of file. */
    String format() {
        return context.iformat().name().getString();
    }

    /** What the file says of itself under a name. */
    Optional<String> tag(String name) {
        AVDictionaryEntry entry = av_dict_get(context.metadata(), name, null, 0);
        return entry == null ? Optional.empty() : Optional.of(entry.value().getString());
    }

    /** From the first picture to the end of the last picture or sound. */
    Duration length() {
        Duration known = length;
        if (known == null) {
            known = end().minus(origin());
            length = known;
        }
        return known;
    }

    /**
     * A Matroska file tells its length on a clock of its own, on which the sound's run-up has time, and its writers do not all
     * mean the same by it; so its end is looked at.
     */
    private Duration end() {
        Duration told = Duration.of(context.duration(), ChronoUnit.MICROS);
        return isMatroska() ? Tail.end(film).orElse(told) : start().plus(told);
    }

    private boolean isMatroska() {
        return format().startsWith("matroska");
    }

    /**
     * What the file's clock shows at the film's beginning: the first picture's time, or without a picture the first sound's.
     * Some containers let the sound begin a little earlier.
     */
    Duration origin() {
        OptionalInt picture = best(AVMEDIA_TYPE_VIDEO);
        if (picture.isPresent()) {
            AVStream stream = context.streams(picture.getAsInt());
            if (stream.start_time() != AV_NOPTS_VALUE) {
                return Ffmpeg.time(stream.start_time(), stream.time_base());
            }
        }
        OptionalInt sound = best(AVMEDIA_TYPE_AUDIO);
        return isMatroska() && sound.isPresent() ? heardFrom(context.streams(sound.getAsInt())) : start();
    }

    /**
     * A coder needs a run-up before it is right. Matroska keeps it in the file and says how long it is: CodecDelay, which the
     * specification has subtracted from every time of the track, and which decoders throw away. So the track begins below
     * zero by as much as is never heard.
     */
    private Duration heardFrom(AVStream sound) {
        int rate = sound.codecpar().sample_rate();
        if (sound.start_time() == AV_NOPTS_VALUE || rate <= 0) {
            return start();
        }
        Duration runUp = Duration.ofNanos(sound.codecpar().initial_padding() * 1_000_000_000L / rate);
        return Ffmpeg.time(sound.start_time(), sound.time_base()).plus(runUp);
    }

    private Duration start() {
        long start = context.start_time();
        return start == AV_NOPTS_VALUE ? Duration.ZERO : Duration.of(start, ChronoUnit.MICROS);
    }

    /** By how many degrees, clockwise, the picture must be turned to stand upright: 0, 90, 180 or 270. */
    static int turn(AVCodecParameters codec) {
        AVPacketSideData matrix =
                av_packet_side_data_get(codec.coded_side_data(), codec.nb_coded_side_data(), AV_PKT_DATA_DISPLAYMATRIX);
        if (matrix == null) {
            return 0;
        }
        double anticlockwise = av_display_rotation_get(new IntPointer(matrix.data()));
        return Double.isNaN(anticlockwise) ? 0 : Math.floorMod(-Math.round(anticlockwise / 90) * 90, 360);
    }

    @Override
    public void close() {
        avformat_close_input(context);
    }
}
