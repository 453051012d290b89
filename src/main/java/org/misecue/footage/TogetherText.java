package org.misecue.footage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A line about each film that ran at the same time, and one about those of which it is not known. */
final class TogetherText {

    private TogetherText() {}

    static List<String> lines(String film, Together together) {
        List<String> lines = new ArrayList<>();
        List<Together.Pair> pairs = together.of(film);
        for (Together.Pair pair : pairs) {
            pair.offset().ifPresent(offset -> lines.add(line(pair.first(), offset)));
        }
        String unknown = pairs.stream()
                .filter(pair -> pair.offset().isEmpty())
                .map(Together.Pair::first)
                .collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            lines.add("not known with " + unknown + ": neither time code nor sound tells");
        }
        return lines;
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
        return basis instanceof Offset.BySound sound
                ? "its sound, alike at %d of %d places".formatted(sound.alike(), sound.tried())
                : "time code";
    }

    private static BigDecimal millis(Duration time) {
        return BigDecimal.valueOf(time.toNanos(), 6);
    }
}
