package org.misecue.shots;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** A YAML document in which every value knows its place. */
sealed interface Yaml {

    Place place();

    record Mapping(Place place, Map<String, Entry> entries) implements Yaml {}

    record Sequence(Place place, List<Yaml> items) implements Yaml {}

    record Scalar(Place place, String text) implements Yaml {}

    /** A key with its place, and its value. */
    record Entry(Place place, Yaml value) {}

    /**
     * Reads a whole document.
     *
     * @throws BadInput at the first place that is not YAML, or where a key stands twice
     */
    static Yaml read(String file, String text) {
        try (JsonParser parser = new YAMLFactory().createParser(text)) {
            if (parser.nextToken() == null) {
                throw new BadInput(Place.of(file), "the file is empty; a shot template begins with \"technique:\".");
            }
            return value(file, parser);
        } catch (JsonProcessingException e) {
            Place place = e.getLocation() == null
                    ? Place.of(file)
                    : new Place(
                            file, e.getLocation().getLineNr(), e.getLocation().getColumnNr());
            String reason = e.getOriginalMessage().lines().findFirst().orElse("unreadable");
            throw new BadInput(place, "this is not YAML (" + reason + "); check colons, quotes and indents.", e);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static Yaml value(String file, JsonParser parser) throws IOException {
        Place place = place(file, parser);
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return mapping(file, parser, place);
        }
        if (token == JsonToken.START_ARRAY) {
            List<Yaml> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(file, parser));
            }
            return new Sequence(place, items);
        }
        return new Scalar(place, token == JsonToken.VALUE_NULL ? "" : parser.getText());
    }

    private static Mapping mapping(String file, JsonParser parser, Place place) throws IOException {
        Map<String, Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            Place keyPlace = place(file, parser);
            String key = parser.currentName();
            parser.nextToken();
            if (entries.putIfAbsent(key, new Entry(keyPlace, value(file, parser))) != null) {
                throw new BadInput(keyPlace, "\"" + key + "\" stands twice; keep one of them.");
            }
        }
        return new Mapping(place, entries);
    }

    private static Place place(String file, JsonParser parser) {
        return new Place(
                file,
                parser.currentTokenLocation().getLineNr(),
                parser.currentTokenLocation().getColumnNr());
    }
}
