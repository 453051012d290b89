package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.avcodec_get_name;
import static org.bytedeco.ffmpeg.global.avformat.av_guess_frame_rate;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entries_count;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entry;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_get;
import static org.bytedeco.ffmpeg.global.avutil.av_get_media_type_string;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.BytePointer;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;

/** Films and what they hold. */
public final class Footage {

    private Footage() {}

    /**
     * Reads what a film holds, without decoding it.
     *
     * @throws BadInput if there is no such film, or it is empty, cut off, or no film at all
     */
    public static FilmInfo probe(Path film) {
        try (Reel reel = Reel.open(film)) {
            List<Track> tracks =
                    reel.streams().stream().map(stream -> track(reel, stream)).toList();
            FilmInfo info = new FilmInfo(reel.length(), tracks, Optional.empty());
            return info.picture()
                    .map(picture -> new FilmInfo(info.length(), tracks, timecode(reel, picture.rate())))
                    .orElse(info);
        }
    }

    private static Track track(Reel reel, AVStream stream) {
        AVCodecParameters codec = stream.codecpar();
        String name = avcodec_get_name(codec.codec_id()).getString();
        if (codec.codec_type() == AVMEDIA_TYPE_AUDIO) {
            return new Track.Sound(name, codec.sample_rate(), codec.ch_layout().nb_channels());
        }
        AVRational rate = av_guess_frame_rate(reel.context(), stream, null);
        boolean moving = rate.num() > 0 && !Reel.isCover(stream);
        if (codec.codec_type() == AVMEDIA_TYPE_VIDEO && moving) {
            return picture(stream, name, new FrameRate(rate.num(), rate.den()));
        }
        BytePointer kind = av_get_media_type_string(codec.codec_type());
        return new Track.Other(name, kind == null ? "data" : kind.getString());
    }

    private static Track picture(AVStream stream, String name, FrameRate rate) {
        AVCodecParameters codec = stream.codecpar();
        AVRational pixel = codec.sample_aspect_ratio();
        int width = pixel.num() == 0 ? codec.width() : Math.round((float) codec.width() * pixel.num() / pixel.den());
        boolean upright = Reel.turn(codec) % 180 == 0;
        return new Track.Picture(
                name, upright ? width : codec.height(), upright ? codec.height() : width, rate, varies(stream));
    }

    /**
     * Whether frames last differently long, by the file's index where it names every frame; a tick more or less is the
     * container's rounding.
     */
    private static boolean varies(AVStream stream) {
        int frames = avformat_index_get_entries_count(stream);
        if (frames < 3 || frames != stream.nb_frames()) {
            return false;
        }
        long shortest = Long.MAX_VALUE;
        long longest = 0;
        for (int i = 1; i < frames; i++) {
            // An entry is read before the next is asked for, because the call may hand out the same memory.
            long from = avformat_index_get_entry(stream, i - 1).timestamp();
            long step = avformat_index_get_entry(stream, i).timestamp() - from;
            shortest = Math.min(shortest, step);
            longest = Math.max(longest, step);
        }
        return longest - shortest > 2;
    }

    private static Optional<Timecode> timecode(Reel reel, FrameRate rate) {
        Stream<AVDictionary> tags = Stream.concat(
                Stream.of(reel.context().metadata()), reel.streams().stream().map(AVStream::metadata));
        return tags.flatMap(tag -> Optional.ofNullable(tag == null ? null : value(tag)).stream())
                .flatMap(text -> readable(text, rate))
                .findFirst();
    }

    private static @Nullable String value(AVDictionary tags) {
        AVDictionaryEntry entry = av_dict_get(tags, "timecode", null, 0);
        return entry == null ? null : entry.value().getString();
    }

    private static Stream<Timecode> readable(String text, FrameRate rate) {
        try {
            return Stream.of(Timecode.parse(text, rate));
        } catch (IllegalArgumentException e) {
            return Stream.empty();
        }
    }
}
