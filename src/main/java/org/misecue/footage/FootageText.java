package org.misecue.footage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Films for people to read: what each holds, how loud it is, and where it is silent. */
public final class FootageText {

    private final Optional<BigDecimal> target;
    private final Together together;
    private final StringBuilder out = new StringBuilder();

    private FootageText(Optional<BigDecimal> target, Together together) {
        this.target = target;
        this.together = together;
    }

    /**
     * @param target the loudness in LUFS that somebody wants; nothing is held against it where it is empty
     * @param together which of them ran at the same time
     */
    public static String of(List<FilmReport> films, Optional<BigDecimal> target, Together together) {
        FootageText text = new FootageText(target, together);
        String between = "";
        for (FilmReport film : films) {
            text.out.append(between);
            text.append(film);
            between = "\n";
        }
        return text.out.toString();
    }

    private void append(FilmReport film) {
        out.append(printable(film.name())).append('\n');
        row("length", Moments.text(film.info().length()));
        row("picture", film.info().picture().map(FootageText::picture).orElse("none"));
        row("time code", film.info().starts().map(Timecode::toString).orElse("none"));
        String what = "together";
        for (String line : TogetherText.lines(film.name(), together)) {
            row(what, printable(line));
            what = "";
        }
        List<Track.Sound> tracks = film.soundTracks();
        if (tracks.isEmpty()) {
            row("sound", "none");
        }
        for (int i = 0; i < tracks.size(); i++) {
            row(tracks.size() == 1 ? "sound" : "sound " + (i + 1), sound(tracks.get(i)));
            film.sounds()
                    .get(i)
                    .ifPresentOrElse(this::append, () -> row("", "not heard, because this build cannot decode it"));
        }
    }

    private void append(TrackSound sound) {
        Loudness loudness = sound.loudness();
        row("", loudness(loudness));
        target.flatMap(wanted -> loudness.above(wanted).map(above -> distance(above, wanted)))
                .ifPresent(words -> row("", words));
        for (Silence silence : sound.silences()) {
            BigDecimal seconds = BigDecimal.valueOf(silence.length().toMillis(), 3);
            row(
                    "",
                    "silent from %s to %s, %s s"
                            .formatted(Moments.text(silence.from()), Moments.text(silence.to()), tenths(seconds)));
        }
    }

    /** Nothing in a name may command the terminal. */
    private static String printable(String text) {
        return text.replaceAll("\\p{Cntrl}", "\uFFFD");
    }

    private void row(String what, String value) {
        out.append("  %-10s ".formatted(what)).append(value).append('\n');
    }

    private static String picture(Track.Picture picture) {
        String rate = BigDecimal.valueOf(picture.rate().frames())
                .divide(BigDecimal.valueOf(picture.rate().seconds()), 3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return "%d × %d, %s, %s frames a second%s"
                .formatted(
                        picture.width(),
                        picture.height(),
                        picture.codec(),
                        rate,
                        picture.variableRate() ? " on average, because they last differently long" : "");
    }

    private static String sound(Track.Sound sound) {
        String channels = sound.channels() == 1 ? "1 channel" : sound.channels() + " channels";
        return "%s, %d Hz, %s".formatted(sound.codec(), sound.sampleRate(), channels);
    }

    private static String loudness(Loudness loudness) {
        List<String> parts = new ArrayList<>();
        parts.add(loudness.integrated()
                .map(value -> tenths(value) + " LUFS")
                .orElse("no loudness: nothing lasts 0.4 s above −70 LUFS"));
        loudness.range().ifPresent(value -> parts.add("range " + tenths(value) + " LU"));
        loudness.truePeak().ifPresent(value -> parts.add("true peak " + tenths(value) + " dBTP"));
        return String.join(", ", parts);
    }

    private static String distance(BigDecimal above, BigDecimal wanted) {
        BigDecimal rounded = above.setScale(1, RoundingMode.HALF_UP);
        String where = rounded.signum() == 0
                ? "at"
                : tenths(rounded.abs()) + (rounded.signum() > 0 ? " LU above" : " LU below");
        return "%s the target of %s LUFS".formatted(where, signed(wanted.stripTrailingZeros()));
    }

    private static String tenths(BigDecimal value) {
        return signed(value.setScale(1, RoundingMode.HALF_UP));
    }

    private static String signed(BigDecimal value) {
        return value.toPlainString().replace('-', '−');
    }
}
