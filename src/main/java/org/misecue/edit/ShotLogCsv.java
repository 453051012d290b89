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
import org.misecue.shots.Shot;

/** The log as a table (RFC 4180): a row for each place of a shot, and one for each shot that is nowhere. */
public final class ShotLogCsv {

    private static final CsvSchema SCHEMA = CsvSchema.builder()
            .addColumn("shot")
            .addColumn("step")
            .addColumn("set-up")
            .addColumn("standing")
            .addColumn("film")
            .addColumn("from")
            .addColumn("to")
            .addColumn("take")
            .addColumn("see")
            .addColumn("say")
            .build()
            .withHeader();

    private ShotLogCsv() {}

    public static String of(ShotLog log) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (LoggedShot logged : log.shots()) {
            logged.places()
                    .forEach(place -> rows.add(
                            row(logged, place.film(), Clock.hms(place.from()), Clock.hms(place.to()), take(place))));
            if (logged.places().isEmpty()) {
                rows.add(row(logged, "", "", "", ""));
            }
        }
        try {
            return new CsvMapper().writer(SCHEMA).writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String take(LoggedShot.Place place) {
        return place.take() > 0 ? String.valueOf(place.take()) : "";
    }

    private static Map<String, String> row(LoggedShot logged, String film, String from, String to, String take) {
        Shot shot = logged.shot();
        return Map.of(
                "shot", String.valueOf(shot.number()),
                "step", shot.step() == 0 ? "" : String.valueOf(shot.step()),
                "set-up", CsvCell.harmless(shot.setup()),
                "standing", logged.standing().code(),
                "film", CsvCell.harmless(film),
                "from", from,
                "to", to,
                "take", take,
                "see", CsvCell.harmless(shot.see()),
                "say", CsvCell.harmless(shot.say()));
    }
}
