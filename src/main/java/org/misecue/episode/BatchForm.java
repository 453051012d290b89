package org.misecue.episode;

import java.util.List;
import java.util.Map;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.scale.Batch;

/** The size that is baked: one of {@code times}, {@code makes}, {@code tin} and {@code have}. */
final class BatchForm {

    static final List<String> KEYS = List.of("times", "makes", "tin", "have");

    private static final Map<String, String> EXAMPLES = Map.of(
            "times", "times: 2",
            "makes", "makes: 24",
            "tin", "tin: 23 cm round",
            "have", "have: 310 g butter");

    private BatchForm() {}

    static Batch batch(StrictMap map) {
        List<String> given = KEYS.stream().filter(map::has).toList();
        if (given.size() > 1) {
            throw new BadInput(
                    map.place(given.get(1)),
                    "batch: “" + given.get(0)
                            + "” already sets the size; keep only one of times, makes, tin and have.");
        }
        return given.isEmpty() ? Batch.WRITTEN : one(map, given.get(0));
    }

    private static Batch one(StrictMap map, String key) {
        Place place = map.place(key);
        String words = map.text(key, EXAMPLES.getOrDefault(key, "")).orElse("");
        return switch (key) {
            case "times" -> Batch.times(place, words);
            case "makes" -> Batch.makes(place, words);
            case "tin" -> Batch.tin(place, words);
            default -> Batch.left(place, words);
        };
    }
}
