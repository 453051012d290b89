package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.misecue.notice.BadInput;

/** The sound of a film heard once from beginning to end: how loud it is, and where it is silent. */
public final class SoundCheck {

    /** The loudness range of a shorter track would say little; common practice, no source. */
    public static final Duration RANGED = Duration.ofSeconds(10);

    private SoundCheck() {}

    /**
     * Listens to each sound track, every one decoded once.
     *
     * @return a result for each sound track in the file's order, itself empty where the track cannot be decoded; none for a film
     *     without sound; empty where the lookout stopped it
     * @throws BadInput if the film cannot be used
     */
    public static Optional<List<Optional<TrackSound>>> of(Path film, Hush hush, Lookout lookout) {
        return of(film, hush, Optional.empty(), lookout);
    }

    /**
     * The same.
     *
     * @param levels takes those of the main sound track, where somebody wants them
     */
    public static Optional<List<Optional<TrackSound>>> of(
            Path film, Hush hush, Optional<Consumer<Levels>> levels, Lookout lookout) {
        Reel reel = Reel.open(film);
        int main = reel.best(AVMEDIA_TYPE_AUDIO).orElse(-1);
        List<AVStream> tracks = reel.streams().stream()
                .filter(stream -> stream.codecpar().codec_type() == AVMEDIA_TYPE_AUDIO)
                .toList();
        List<Integer> numbers = tracks.stream().map(AVStream::index).toList();
        List<Integer> decodable =
                tracks.stream().filter(Decoder::canDecode).map(AVStream::index).toList();
        if (decodable.isEmpty()) {
            reel.close();
        }
        List<Optional<TrackSound>> heard = new ArrayList<>();
        try {
            for (int track : numbers) {
                if (!decodable.contains(track)) {
                    heard.add(Optional.empty());
                    continue;
                }
                // A decoder takes its reel over; the first one's is open already.
                boolean first = decodable.indexOf(track) == 0;
                boolean measured = track == main && levels.isPresent();
                try (Listener listener = new Listener(first ? reel : Reel.open(film), track, hush, measured)) {
                    if (!listener.listen(lookout)) {
                        return Optional.empty();
                    }
                    heard.add(Optional.of(listener.heard()));
                    listener.levels().ifPresent(heights -> levels.ifPresent(taker -> taker.accept(heights)));
                }
            }
        } catch (FilmFault e) {
            throw e.of(film);
        }
        return Optional.of(List.copyOf(heard));
    }
}
