package org.misecue.search;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.narration.Moment;

/**
 * A result for programs: {@code {"query", "suggestion"?, "caution"?, "hits": [{"source", "at", "end", "quote", "step", "score",
 * "kind", "marks", "speaker"?, "camera"?: {"film", "at"}, "episode"?}]}}, best first. Times are in seconds on the source's clock; {@code step} is 0
 * where none is known; {@code marks} are {@code [from, to)} characters of the quote; {@code camera} is the same moment
 * on the clock of a film that was asked for; {@code episode}, a path within
 * the archive, is there where an archive was searched.
 */
public final class FindJson {

    private FindJson() {}

    public static String of(FindResult result) {
        return of(result, hit -> Optional.empty());
    }

    /** @param camera the same moment in another camera's film */
    public static String of(FindResult result, Function<Hit, Optional<Moment>> camera) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            json.writeStringField("query", result.query());
            if (result.suggestion().isPresent()) {
                json.writeStringField("suggestion", result.suggestion().get());
            }
            if (result.caution().isPresent()) {
                json.writeStringField("caution", result.caution().get());
            }
            json.writeArrayFieldStart("hits");
            for (Hit hit : result.hits()) {
                write(hit, result.archive(), camera.apply(hit), json);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not into memory
        }
        return out.append('\n').toString();
    }

    private static void write(Hit hit, boolean withEpisode, Optional<Moment> camera, JsonGenerator json)
            throws IOException {
        json.writeStartObject();
        if (withEpisode) {
            json.writeStringField("episode", hit.episodeName());
        }
        json.writeStringField("source", hit.source());
        json.writeNumberField("at", BigDecimal.valueOf(hit.at().toMillis(), 3));
        json.writeNumberField("end", BigDecimal.valueOf(hit.end().toMillis(), 3));
        json.writeStringField("quote", hit.quote());
        json.writeNumberField("step", hit.step());
        json.writeNumberField("score", BigDecimal.valueOf(hit.score()).setScale(3, RoundingMode.HALF_EVEN));
        json.writeStringField("kind", hit.kind().name().toLowerCase(Locale.ROOT));
        json.writeArrayFieldStart("marks");
        for (Hit.Mark mark : hit.marks()) {
            json.writeStartArray();
            json.writeNumber(mark.from());
            json.writeNumber(mark.to());
            json.writeEndArray();
        }
        json.writeEndArray();
        if (hit.speaker().isPresent()) {
            json.writeStringField("speaker", hit.speaker().get());
        }
        if (camera.isPresent()) {
            json.writeObjectFieldStart("camera");
            json.writeStringField("film", camera.get().source());
            json.writeNumberField("at", BigDecimal.valueOf(camera.get().at().toMillis(), 3));
            json.writeEndObject();
        }
        json.writeEndObject();
    }
}
