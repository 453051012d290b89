package org.misecue.edit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The log for programs: {@code {"title", "shots": [{"number", "step", "setup", "standing", "takes", "called", "places":
 * [{"film", "from", "to", "take"}]}], "silent": [film]}}. Times are seconds on the film's clock; {@code takes} are wished and
 * {@code called} heard; a take of 0 was not called; {@code standing} is slated, spoken, look or missing.
 */
public final class ShotLogJson {

    private ShotLogJson() {}

    public static String of(ShotLog log) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("title", log.title());
        document.put("shots", log.shots().stream().map(ShotLogJson::shot).toList());
        document.put("silent", log.silent());
        try {
            return new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT).writeValueAsString(document) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, Object> shot(LoggedShot logged) {
        Map<String, Object> shot = new LinkedHashMap<>();
        shot.put("number", logged.shot().number());
        shot.put("step", logged.shot().step());
        shot.put("setup", logged.shot().setup());
        shot.put("standing", logged.standing().code());
        shot.put("takes", logged.shot().takes());
        shot.put("called", logged.takesCalled());
        shot.put("places", logged.places().stream().map(ShotLogJson::place).toList());
        return shot;
    }

    private static Map<String, Object> place(LoggedShot.Place place) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("film", place.film());
        values.put("from", seconds(place.from()));
        values.put("to", seconds(place.to()));
        values.put("take", place.take());
        return values;
    }

    private static BigDecimal seconds(Duration time) {
        return BigDecimal.valueOf(time.toMillis(), 3);
    }
}
