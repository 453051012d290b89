package org.misecue.footage;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;

/** A film's {@code together}, {@code contradicted} and {@code notKnown} for programs; {@link FootageJson} tells what is in them. */
final class TogetherJson {

    private TogetherJson() {}

    static void write(String film, Together together, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("together");
        for (Together.Pair pair : together.of(film)) {
            if (pair.beside().offset().isPresent()) {
                write(pair.first(), pair.beside().offset().get(), pair.beside().denied(), json);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("contradicted");
        for (Together.Pair pair : together.of(film)) {
            Beside beside = pair.beside();
            if (beside.offset().isEmpty() && beside.denied().isPresent()) {
                json.writeStartObject();
                json.writeStringField("film", pair.first());
                json.writeNumberField("byTimecode", seconds(beside.denied().get()));
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("notKnown");
        for (Together.Pair pair : together.of(film)) {
            if (pair.beside().equals(Beside.UNKNOWN)) {
                json.writeString(pair.first());
            }
        }
        json.writeEndArray();
    }

    private static void write(String other, Offset offset, Optional<Duration> denied, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("film", other);
        json.writeNumberField("began", seconds(offset.later()));
        boolean bySound = offset.basis() instanceof Offset.BySound;
        json.writeStringField("by", bySound ? "sound" : "timecode");
        if (denied.isPresent()) {
            json.writeNumberField("byTimecode", seconds(denied.get()));
        }
        if (!offset.apart().isZero()) {
            json.writeNumberField("apartPerHour", seconds(offset.apart()));
        }
        write(offset.basis(), json);
        json.writeEndObject();
    }

    private static void write(Offset.Basis basis, JsonGenerator json) throws IOException {
        if (basis instanceof Offset.BySound sound) {
            json.writeNumberField("alike", sound.alike());
            json.writeNumberField("tried", sound.tried());
            json.writeNumberField("clearness", sound.clearness());
        } else if (basis instanceof Offset.ByBoth both) {
            json.writeStringField("sound", "agrees");
            json.writeNumberField("alike", both.alike());
            json.writeNumberField("tried", both.tried());
        } else if (basis.equals(new Offset.ByTimecode(true))) {
            json.writeStringField("sound", "cannotTell");
        }
    }

    private static BigDecimal seconds(Duration time) {
        return BigDecimal.valueOf(time.toNanos(), 9).setScale(3, RoundingMode.HALF_EVEN);
    }
}
