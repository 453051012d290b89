package org.misecue.narration;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What speech recognisers write as JSON. The shape, times in seconds:
 *
 * <pre>{@code
 * {"segments": [
 *   {"start": 48.2, "end": 52.9, "text": "two hundred grams of flour", "speaker": "A",
 *    "words": [{"word": "two", "start": 48.2, "end": 48.5}, …]}
 * ]}
 * }</pre>
 *
 * <p>Only a start and either text or words are needed. The array may also stand alone. A word is called {@code word} or
 * {@code text}; words without a time, as some aligners leave numbers, are placed between their neighbours. Other keys are
 * passed over.
 */
final class RecogniserJson implements CueFormat {

    private static final Pattern BEGINNING = Pattern.compile("\\s*(\\{\\s*[\"}]|\\[\\s*[\\]{])");

    @Override
    public String name() {
        return "recogniser JSON";
    }

    @Override
    public List<String> extensions() {
        return List.of(".json");
    }

    @Override
    public String example() {
        return "{\"segments\": [{\"start\": 65.0, \"end\": 69.5, \"text\": \"and now the flour\"}]}";
    }

    @Override
    public boolean recognises(String text) {
        return BEGINNING.matcher(text).lookingAt();
    }

    @Override
    public void read(String text, CueSheet sheet) {
        try (JsonParser parser = JsonMapper.builder().build().createParser(text)) {
            JsonToken first = parser.nextToken();
            if (first == JsonToken.START_ARRAY) {
                readSegments(parser, sheet);
                return;
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean segments = parser.currentName().equals("segments");
                if (parser.nextToken() == JsonToken.START_ARRAY && segments) {
                    readSegments(parser, sheet);
                } else {
                    parser.skipChildren();
                }
            }
        } catch (JsonProcessingException e) {
            throw sheet.badInput(
                    e.getLocation() == null ? 0 : e.getLocation().getLineNr(),
                    e.getLocation() == null ? 0 : e.getLocation().getColumnNr(),
                    "the JSON is damaged or cut off here; export the narration again");
        } catch (IOException e) {
            throw new UncheckedIOException(e); // not from a string
        }
    }

    private static void readSegments(JsonParser parser, CueSheet sheet) throws IOException {
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            int line = parser.currentTokenLocation().getLineNr();
            readSegment(parser.readValueAsTree(), line, sheet);
        }
    }

    private static void readSegment(JsonNode segment, int line, CueSheet sheet) {
        List<SpokenWord> words = words(segment);
        Optional<Duration> start = seconds(segment.path("start"))
                .or(() -> words.stream().flatMap(word -> word.at().stream()).findFirst());
        if (start.isEmpty()) {
            sheet.note(line, "expected a segment with its \"start\" in seconds; it was left out");
            return;
        }
        Optional<String> speaker =
                Optional.of(segment.path("speaker").asText("").strip());
        sheet.add(new CueSheet.Draft(
                line, start.get(), seconds(segment.path("end")), speaker.filter(name -> !name.isEmpty()), words));
    }

    private static List<SpokenWord> words(JsonNode segment) {
        List<SpokenWord> words = new ArrayList<>();
        for (JsonNode word : segment.path("words")) {
            String text = word.path("word").asText(word.path("text").asText(""));
            words.addAll(SpokenWord.startingAt(seconds(word.path("start")), text));
        }
        return words.isEmpty() ? SpokenWord.of(segment.path("text").asText("")) : words;
    }

    /** A number, or a number in quotes. */
    private static Optional<Duration> seconds(JsonNode node) {
        try {
            BigDecimal seconds = node.isTextual()
                    ? new BigDecimal(node.textValue().strip())
                    : node.isNumber() ? node.decimalValue() : BigDecimal.ONE.negate();
            boolean sensible = seconds.signum() >= 0
                    && seconds.compareTo(BigDecimal.valueOf(Clock.LONGEST.toSeconds())) <= 0
                    && seconds.scale() < 1000;
            return sensible
                    ? Optional.of(Duration.ofMillis(
                            seconds.movePointRight(3).toBigInteger().longValue()))
                    : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
