package org.misecue.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.misecue.compare.CompareJson;
import org.misecue.compare.Comparison;

/** A truth, or a comparison as any scorer sees it: through the document that {@code compare --json} prints. */
record Rows(List<Row> written, List<Row> settings, List<Row> unwritten) {

    private static final JsonMapper JSON = new JsonMapper();

    static final Rows NONE = new Rows(List.of(), List.of(), List.of());

    static Rows read(Path truth) {
        try {
            return of(Files.readString(truth));
        } catch (IOException e) {
            throw new UncheckedIOException(truth + " cannot be read", e);
        }
    }

    static Rows of(Comparison comparison) {
        try {
            return of(CompareJson.of(comparison, List.of()));
        } catch (IOException e) {
            throw new UncheckedIOException("the comparison's JSON cannot be read", e);
        }
    }

    private static Rows of(String text) throws IOException {
        JsonNode json = JSON.readTree(text);
        return new Rows(rows(json, "written"), rows(json, "settings"), rows(json, "unwritten"));
    }

    private static List<Row> rows(JsonNode json, String name) {
        return StreamSupport.stream(json.path(name).spliterator(), false)
                .map(Row::of)
                .toList();
    }
}
