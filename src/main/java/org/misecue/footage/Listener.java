package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.av_dict_get;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/** Hears one sound track through FFmpeg's meter of EBU R 128 and its finder of silence, both in one go. */
final class Listener implements AutoCloseable {

    private static final String METER = "ebur128@meter";

    /** What the meter shows where nothing passed its absolute gate. */
    private static final BigDecimal GATE = BigDecimal.valueOf(-70);

    private final Hush hush;
    private final Decoder decoder;
    private final Duration origin;
    private final AVFrame frame = av_frame_alloc();
    private final AVFrame metered = av_frame_alloc();
    private final Optional<LevelMeter> levels;
    private final List<Silence> silences = new ArrayList<>();
    private @Nullable Filter filter;
    private @Nullable Duration silentFrom;
    private Duration begins = Duration.ZERO;
    private Duration end = Duration.ZERO;

    /**
     * Takes the reel over.
     *
     * @param levels whether to measure them besides
     */
    Listener(Reel reel, int track, Hush hush, boolean levels) {
        this.hush = hush;
        this.origin = reel.origin();
        this.decoder = new Decoder(reel, track);
        this.levels = levels ? Optional.of(new LevelMeter(decoder)) : Optional.empty();
    }

    /** Hears the track to its end; false where the lookout stopped it. */
    boolean listen(Lookout lookout) {
        while (decoder.next(frame)) {
            Filter meters = filter;
            if (meters == null) {
                meters = Filter.sound(frame, decoder.stream().time_base(), chain());
                filter = meters;
                begins = Ffmpeg.time(frame.pts(), decoder.stream().time_base()).minus(origin);
            }
            levels.ifPresent(meter -> meter.hear(frame));
            meters.push(frame);
            read(meters);
            if (!lookout.goOn(end)) {
                return false;
            }
        }
        if (filter != null) {
            filter.push(null);
            read(filter);
        }
        if (silentFrom != null) {
            add(silentFrom, end);
        }
        return true;
    }

    private String chain() {
        return "%s=peak=true:framelog=quiet,silencedetect=noise=%sdB:duration=%s"
                .formatted(
                        METER,
                        hush.below().toPlainString(),
                        BigDecimal.valueOf(hush.least().toNanos(), 9));
    }

    private void read(Filter meters) {
        while (meters.pull(metered)) {
            end = Ffmpeg.time(metered.pts(), meters.base())
                    .minus(origin)
                    .plus(samples(metered.nb_samples(), metered.sample_rate()));
            Optional<Duration> from = moment("lavfi.silence_start");
            Optional<Duration> to = moment("lavfi.silence_end");
            if (from.isPresent()) {
                silentFrom = from.get();
            }
            if (to.isPresent() && silentFrom != null) {
                add(silentFrom, to.get());
                silentFrom = null;
            }
            av_frame_unref(metered);
        }
    }

    /** Sound may begin before the first picture, with which the film's clock begins. */
    private void add(Duration from, Duration to) {
        if (to.compareTo(Duration.ZERO) > 0) {
            silences.add(new Silence(from.isNegative() ? Duration.ZERO : from, to));
        }
    }

    private static Duration samples(int count, int rate) {
        return Duration.ofNanos(count * 1_000_000_000L / rate);
    }

    private Optional<Duration> moment(String key) {
        AVDictionaryEntry entry = av_dict_get(metered.metadata(), key, null, 0);
        return entry == null
                ? Optional.empty()
                : Optional.of(nanos(new BigDecimal(entry.value().getString())).minus(origin));
    }

    private static Duration nanos(BigDecimal seconds) {
        return Duration.ofNanos(seconds.movePointRight(9).longValue());
    }

    TrackSound heard() {
        Optional<BigDecimal> integrated = shown("integrated").filter(value -> value.compareTo(GATE) > 0);
        boolean ranged = integrated.isPresent() && end.minus(begins).compareTo(SoundCheck.RANGED) >= 0;
        Optional<BigDecimal> range = ranged ? shown("range") : Optional.empty();
        return new TrackSound(new Loudness(integrated, range, shown("true_peak")), List.copyOf(silences));
    }

    /** Where they were asked for; after the end. */
    Optional<Levels> levels() {
        return levels.map(LevelMeter::levels);
    }

    private Optional<BigDecimal> shown(String value) {
        double shown = filter == null ? Double.NEGATIVE_INFINITY : filter.value(METER, value);
        return Double.isFinite(shown)
                ? Optional.of(BigDecimal.valueOf(shown).setScale(3, RoundingMode.HALF_EVEN))
                : Optional.empty();
    }

    @Override
    public void close() {
        levels.ifPresent(LevelMeter::close);
        av_frame_free(frame);
        av_frame_free(metered);
        if (filter != null) {
            filter.close();
        }
        decoder.close();
    }
}
