package org.misecue.edit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.misecue.narration.Clock;
import org.misecue.page.CsvCell;

/** Markers as a table (RFC 4180) for spreadsheets and for whoever reads nothing else. */
public final class CsvFile {

    private static final CsvSchema SCHEMA = CsvSchema.builder()
            .addColumn("film")
            .addColumn("at")
            .addColumn("seconds")
            .addColumn("time code")
            .addColumn("frame")
            .addColumn("kind")
            .addColumn("name")
            .addColumn("comment")
            .build()
            .withHeader();

    private CsvFile() {}

    /** A row for each marker. */
    public static String of(List<MarkedFilm> films) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (MarkedFilm film : films) {
            for (Marker marker : film.markers()) {
                rows.add(Map.of(
                        "film", CsvCell.harmless(film.file()),
                        "at", Clock.hms(marker.at()),
                        "seconds", "%.3f".formatted(marker.at().toMillis() / 1000.0),
                        "time code", film.timecode(marker).toString(),
                        "frame", String.valueOf(film.rate().frameAt(marker.at())),
                        "kind", marker.kind().word(),
                        "name", CsvCell.harmless(marker.name()),
                        "comment", CsvCell.harmless(marker.comment())));
            }
        }
        try {
            return new CsvMapper().writer(SCHEMA).writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
