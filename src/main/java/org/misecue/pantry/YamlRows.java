package org.misecue.pantry;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Reads a YAML list of rows, each with the line it begins on. Strict: whatever is not a known row stops the reading. */
final class YamlRows {

    private YamlRows() {}

    /** @throws BadInput at the first row that is not a mapping of the known keys */
    static List<YamlRow> read(String file, InputStream in, Set<String> keys) {
        List<YamlRow> rows = new ArrayList<>();
        ObjectMapper mapper = new ObjectMapper(new YAMLFactory());
        try (JsonParser parser = mapper.createParser(in)) {
            if (parser.nextToken() != JsonToken.START_ARRAY) {
                throw new BadInput(Place.of(file), "expected a list of rows that begin with “- ”.");
            }
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                int line = parser.currentTokenLocation().getLineNr();
                JsonNode node = mapper.readTree(parser);
                rows.add(YamlRow.of(Place.of(file, line), node, keys));
            }
        } catch (JsonProcessingException e) {
            throw new BadInput(
                    Place.of(file, e.getLocation() == null ? 0 : e.getLocation().getLineNr()),
                    "this is not YAML: "
                            + e.getOriginalMessage().lines().findFirst().orElse("unreadable") + ".",
                    e);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
        return rows;
    }
}
