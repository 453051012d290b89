package org.misecue.episode;

import java.util.List;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.scale.Batch;

/** The size that is baked: one of {@code times}, {@code makes} and {@code tin}. */
final class BatchForm {

    static final List<String> KEYS = List.of("times", "makes", "tin");

    private BatchForm() {}

    static Batch batch(StrictMap map) {
        List<String> given = KEYS.stream().filter(map::has).toList();
        if (given.size() > 1) {
            throw new BadInput(
                    map.place(given.get(1)),
                    "batch: “" + given.get(0) + "” already sets the size; keep only one of times, makes and tin.");
        }
        return given.isEmpty() ? Batch.WRITTEN : one(map, given.get(0));
    }

    private static Batch one(StrictMap map, String key) {
        Place place = map.place(key);
        String words = map.text(key, key + ": 2").orElse("");
        return switch (key) {
            case "times" -> Batch.times(place, words);
            case "makes" -> Batch.makes(place, words);
            default -> Batch.tin(place, words);
        };
    }
}
