package org.misecue.footage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * Films for programs: {@code {"target"?, "films": [{"film", "length", "picture"?: {"codec", "width", "height", "rate",
 * "variableRate"}, "timecode"?, "together": [{"film", "began", "by", "byTimecode"?, "apartPerHour"?, "sound"?, "alike"?,
 * "tried"?, "clearness"?}], "contradicted": [{"film", "byTimecode"}], "notKnown": [film], "sounds": [{"codec",
 * "sampleRate", "channels", "lufs"?, "rangeLu"?, "truePeakDbtp"?, "aboveTargetLu"?, "silences"?: [{"from", "to"}]}]}]}}.
 * Times are in seconds on the film's clock, a rate is a whole number or a fraction in a string; what could not be measured is
 * left out. It {@code began} so many seconds after the other film, below 0 before it, {@code by} "timecode", of which the
 * {@code sound} "agrees" or "cannotTell" where it was asked, or by "sound"; {@code apartPerHour} are the seconds by which the
 * other's clock gains on it in an hour; {@code byTimecode} is what time codes say and the sound contradicts.
 */
public final class FootageJson {

    private FootageJson() {}

    /**
     * @param target the loudness in LUFS that somebody wants
     * @param together which of them ran at the same time
     */
    public static String of(List<FilmReport> films, Optional<BigDecimal> target, Together together) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            if (target.isPresent()) {
                json.writeNumberField("target", target.get());
            }
            json.writeArrayFieldStart("films");
            for (FilmReport film : films) {
                write(film, target, together, json);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not into memory
        }
        return out.append('\n').toString();
    }

    private static void write(FilmReport film, Optional<BigDecimal> target, Together together, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("film", film.name());
        json.writeNumberField("length", seconds(film.info().length()));
        Optional<Track.Picture> picture = film.info().picture();
        if (picture.isPresent()) {
            json.writeObjectFieldStart("picture");
            json.writeStringField("codec", picture.get().codec());
            json.writeNumberField("width", picture.get().width());
            json.writeNumberField("height", picture.get().height());
            json.writeStringField("rate", picture.get().rate().toString());
            json.writeBooleanField("variableRate", picture.get().variableRate());
            json.writeEndObject();
        }
        if (film.info().starts().isPresent()) {
            json.writeStringField("timecode", film.info().starts().get().toString());
        }
        TogetherJson.write(film.name(), together, json);
        json.writeArrayFieldStart("sounds");
        for (int i = 0; i < film.sounds().size(); i++) {
            write(film.soundTracks().get(i), film.sounds().get(i), target, json);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(
            Track.Sound track, Optional<TrackSound> heard, Optional<BigDecimal> target, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("codec", track.codec());
        json.writeNumberField("sampleRate", track.sampleRate());
        json.writeNumberField("channels", track.channels());
        if (heard.isPresent()) {
            write(heard.get(), target, json);
        }
        json.writeEndObject();
    }

    private static void write(TrackSound heard, Optional<BigDecimal> target, JsonGenerator json) throws IOException {
        Loudness loudness = heard.loudness();
        tenths("lufs", loudness.integrated(), json);
        tenths("rangeLu", loudness.range(), json);
        tenths("truePeakDbtp", loudness.truePeak(), json);
        tenths("aboveTargetLu", target.flatMap(loudness::above), json);
        json.writeArrayFieldStart("silences");
        for (Silence silence : heard.silences()) {
            json.writeStartObject();
            json.writeNumberField("from", seconds(silence.from()));
            json.writeNumberField("to", seconds(silence.to()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void tenths(String name, Optional<BigDecimal> value, JsonGenerator json) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(name, value.get().setScale(1, RoundingMode.HALF_UP));
        }
    }

    private static BigDecimal seconds(Duration time) {
        return BigDecimal.valueOf(time.toMillis(), 3);
    }
}
