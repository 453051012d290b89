package org.misecue.footage;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;

/** A film's {@code together} and {@code notKnown} for programs; {@link FootageJson} tells what is in them. */
final class TogetherJson {

    private TogetherJson() {}

    static void write(String film, Together together, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("together");
        for (Together.Pair pair : together.of(film)) {
            if (pair.offset().isPresent()) {
                write(pair.first(), pair.offset().get(), json);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("notKnown");
        for (Together.Pair pair : together.of(film)) {
            if (pair.offset().isEmpty()) {
                json.writeString(pair.first());
            }
        }
        json.writeEndArray();
    }

    private static void write(String other, Offset offset, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("film", other);
        json.writeNumberField("began", seconds(offset.later()));
        if (offset.basis() instanceof Offset.BySound sound) {
            json.writeStringField("by", "sound");
            if (!offset.apart().isZero()) {
                json.writeNumberField("apartPerHour", seconds(offset.apart()));
            }
            json.writeNumberField("alike", sound.alike());
            json.writeNumberField("tried", sound.tried());
            json.writeNumberField("clearness", sound.clearness());
        } else {
            json.writeStringField("by", "timecode");
        }
        json.writeEndObject();
    }

    private static BigDecimal seconds(Duration time) {
        return BigDecimal.valueOf(time.toNanos(), 9).setScale(3, RoundingMode.HALF_EVEN);
    }
}
