package org.misecue.episode;

import java.math.BigDecimal;
import java.util.List;
import org.misecue.notice.BadInput;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

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
        return given.isEmpty() ? Batch.written() : one(map, given.get(0));
    }

    private static Batch one(StrictMap map, String key) {
        return switch (key) {
            case "times" -> new Batch.Times(times(map));
            case "makes" -> new Batch.Makes(map.whole("makes", 1, 10_000, 24));
            default -> new Batch.Tin(map.text("tin", "tin: 23 cm round").orElse(""));
        };
    }

    private static RationalNumber times(StrictMap map) {
        String text = map.text("times", "times: 2").orElse("");
        if (text.matches("\\d{1,3}(\\.\\d{1,4})?")) {
            RationalNumber factor = Rationals.of(new BigDecimal(text));
            if (factor.compareTo(Rationals.of(1, 100)) >= 0 && factor.compareTo(Rationals.of(100)) <= 0) {
                return factor;
            }
        }
        throw map.wrong("times", "a number from 0.01 to 100", "times: 2");
    }
}
