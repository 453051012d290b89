package org.misecue.footage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A line about each film that ran at the same time or seems to, and one about those of which it is not known. */
final class TogetherText {

    private TogetherText() {}

    static List<String> lines(String film, Together together) {
        List<String> lines = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (Together.Pair pair : together.of(film)) {
            if (pair.beside().equals(Beside.UNKNOWN)) {
                unknown.add(pair.first());
            } else {
                lines.add(line(pair.first(), pair.beside()));
            }
        }
        if (!unknown.isEmpty()) {
            lines.add("not known with " + String.join(", ", unknown) + ": neither time code nor sound tells");
        }
        return lines;
    }

    private static String line(String other, Beside beside) {
        if (beside.offset().isEmpty()) {
            return "not laid together with " + other + ": by time code it "
                    + began(beside.denied().orElse(Duration.ZERO)) + " it, but the two sound different";
        }
        String not = beside.denied()
                .map(denied -> "; by time code it " + began(denied) + " it, which its sound denies")
                .orElse("");
        return line(other, beside.offset().get()) + not;
    }

    private static String line(String other, Offset offset) {
        String line = began(offset.later()) + " " + other + ", by " + basis(offset.basis());
        BigDecimal apart = millis(offset.apart().abs()).setScale(0, RoundingMode.HALF_UP);
        return apart.signum() == 0 ? line : line + "; runs apart " + apart + " ms per hour";
    }

    private static String began(Duration later) {
        BigDecimal seconds = millis(later.abs()).movePointLeft(3).setScale(3, RoundingMode.HALF_UP);
        return seconds.signum() == 0
                ? "began with"
                : "began " + seconds.toPlainString() + (later.isNegative() ? " s before" : " s after");
    }

    private static String basis(Offset.Basis basis) {
        if (basis instanceof Offset.BySound sound) {
            return "its sound, alike at %d of %d places".formatted(sound.alike(), sound.tried());
        }
        if (basis instanceof Offset.ByBoth both) {
            return "time code, and its sound agrees at %d of %d places".formatted(both.alike(), both.tried());
        }
        return basis.equals(new Offset.ByTimecode(true)) ? "time code alone: its sound cannot tell" : "time code";
    }

    private static BigDecimal millis(Duration time) {
        return BigDecimal.valueOf(time.toNanos(), 6);
    }
}
