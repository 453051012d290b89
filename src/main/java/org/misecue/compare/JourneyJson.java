package org.misecue.compare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import org.misecue.compare.Journey.Stop;

/** The {@code compare --explain --json} document: names are kept, sentences may be put better. */
public final class JourneyJson {

    private JourneyJson() {}

    static String of(List<Journey> journeys) {
        return of(journeys, List.of());
    }

    /** @param heardOtherwise sentences about words that somebody corrected */
    public static String of(List<Journey> journeys, List<String> heardOtherwise) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter());
            json.writeStartObject();
            scale(json);
            json.writeArrayFieldStart("journeys");
            for (Journey journey : journeys) {
                journey(json, journey);
            }
            json.writeEndArray();
            CompareJson.sentences(json, "heardOtherwise", heardOtherwise);
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out + "\n";
    }

    private static void scale(JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("scale");
        json.writeNumberField("counts", Scoring.ENOUGH);
        json.writeNumberField("countsBare", Scoring.ENOUGH_FOR_BARE);
        json.writeNumberField("sure", Scoring.SURE);
        json.writeEndObject();
    }

    private static void journey(JsonGenerator json, Journey journey) throws IOException {
        json.writeStartObject();
        json.writeStringField("what", journey.what());
        json.writeStringField("where", journey.where());
        if (journey.verdict().isPresent()) {
            json.writeStringField("verdict", journey.verdict().get().code());
            json.writeNumberField(
                    "confidence", BigDecimal.valueOf(journey.confidence().percent(), 2));
        }
        stops(json, "stops", journey.stops());
        json.writeArrayFieldStart("outcome");
        for (String sentence : journey.outcome()) {
            json.writeString(sentence);
        }
        json.writeEndArray();
        stops(json, "nearBy", journey.nearBy());
        json.writeEndObject();
    }

    private static void stops(JsonGenerator json, String name, List<Stop> stops) throws IOException {
        json.writeArrayFieldStart(name);
        for (Stop stop : stops) {
            json.writeStartObject();
            CompareJson.evidenceFields(json, stop.evidence());
            json.writeStringField("sentence", stop.sentence());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
