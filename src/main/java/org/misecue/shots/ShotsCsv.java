package org.misecue.shots;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.misecue.page.CsvCell;

/** The list for a spreadsheet: one shot a row, with a head line, in UTF-8. No cell is taken for a formula. */
public final class ShotsCsv {

    private ShotsCsv() {}

    public static String of(ShotPlan plan, ShotOrder order) {
        List<Map<String, String>> rows =
                plan.in(order).stream().map(ShotsCsv::row).toList();
        CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true);
        rows.stream().limit(1).flatMap(row -> row.keySet().stream()).forEach(schema::addColumn);
        try {
            return new CsvMapper().writer(schema.build()).writeValueAsString(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> row(Shot shot) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("number", String.valueOf(shot.number()));
        row.put("step", shot.step() == 0 ? "" : ShotWords.stepNumbers(shot));
        row.put("kind", shot.kind().code());
        row.put("technique", shot.technique());
        row.put("setup", CsvCell.harmless(shot.setup()));
        row.put("camera", CsvCell.harmless(shot.camera()));
        row.put("see", CsvCell.harmless(shot.see()));
        row.put("hands", CsvCell.harmless(shot.hands()));
        row.put("bowls", shot.bowls().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        row.put("sound", CsvCell.harmless(shot.sound()));
        row.put("say", CsvCell.harmless(shot.say()));
        row.put("lower third", CsvCell.harmless(shot.lowerThird()));
        row.put("takes", String.valueOf(shot.takes()));
        row.put("one chance", shot.oneChance() ? "yes" : "");
        row.put(
                "hazards",
                CsvCell.harmless(shot.hazards().stream().map(Hazard::toString).collect(Collectors.joining(" "))));
        row.put("slates", String.join(", ", shot.slates()));
        row.put("after", shot.after().stream().map(String::valueOf).collect(Collectors.joining(" ")));
        row.put("done", "");
        return row;
    }
}
