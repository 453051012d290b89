package org.misecue.narration;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the root of a TTML document says of its times, with the defaults of TTML1 ("Parameter Attributes", from memory). What
 * cannot be read, or cannot be followed, is told.
 */
final class TtmlParameters {

    private static final int FRAME_RATE = 30;
    private static final Pattern NUMBER = Pattern.compile("[1-9]\\d{0,8}");
    private static final Pattern MULTIPLIER = Pattern.compile("([1-9]\\d{0,8})[ :]([1-9]\\d{0,8})");

    private final Function<String, Optional<String>> parameter;
    private final Consumer<String> problem;

    private TtmlParameters(Function<String, Optional<String>> parameter, Consumer<String> problem) {
        this.parameter = parameter;
        this.problem = problem;
    }

    /**
     * @param parameter the value of an attribute such as {@code frameRate}
     * @param problem takes a sentence for each that cannot be read or followed
     */
    static TtmlClock clock(Function<String, Optional<String>> parameter, Consumer<String> problem) {
        return new TtmlParameters(parameter, problem).clock();
    }

    private TtmlClock clock() {
        Optional<Integer> frameRate = number("frameRate", "30 frames a second");
        int counted = frameRate.orElse(FRAME_RATE);
        BigDecimal rate = multiplied(BigDecimal.valueOf(counted));
        int subFrames = number("subFrameRate", "1").orElse(1);
        BigDecimal perSecond = rate.multiply(BigDecimal.valueOf(subFrames));
        BigDecimal ticks = number("tickRate", frameRate.isPresent() ? "as many as frames" : "1 a second")
                .map(BigDecimal::valueOf)
                .orElse(frameRate.isPresent() ? perSecond : BigDecimal.ONE);
        return new TtmlClock(rate, counted, subFrames, ticks, counting());
    }

    private BigDecimal multiplied(BigDecimal rate) {
        Optional<String> text = parameter.apply("frameRateMultiplier").map(String::strip);
        Optional<Matcher> parts = text.map(MULTIPLIER::matcher).filter(Matcher::matches);
        if (parts.isEmpty()) {
            text.ifPresent(
                    value -> unreadable("frameRateMultiplier", value, "two whole numbers such as 1000 1001", "1"));
            return rate;
        }
        return rate.multiply(new BigDecimal(parts.get().group(1)))
                .divide(new BigDecimal(parts.get().group(2)), MathContext.DECIMAL64);
    }

    private TtmlClock.Counting counting() {
        String base = word("timeBase", List.of("media", "smpte", "clock"));
        String drop = word("dropMode", List.of("nonDrop", "dropNTSC", "dropPAL"));
        String markers = word("markerMode", List.of("continuous", "discontinuous"));
        if (base.equals("clock")) {
            problem.accept(
                    "timeBase is clock, so its times are those of a wall clock; they were taken as they stand, and an"
                            + " offset under narration in episode.yaml brings them onto the film's clock");
        }
        if (!base.equals("smpte")) {
            return TtmlClock.Counting.MEDIA;
        }
        if (markers.equals("discontinuous")) {
            problem.accept(
                    "markerMode is discontinuous, so its time code may jump, and what comes after a jump cannot be"
                            + " placed; the times were taken as if it ran through");
        }
        if (drop.equals("dropPAL")) {
            problem.accept("dropMode is dropPAL, which is not followed; its time code was counted as nonDrop");
        }
        return drop.equals("dropNTSC") ? TtmlClock.Counting.SMPTE_DROP : TtmlClock.Counting.SMPTE;
    }

    /** @return the first of them where none is given, or another word */
    private String word(String name, List<String> known) {
        String usual = known.get(0);
        String text = parameter.apply(name).map(String::strip).orElse(usual);
        if (known.contains(text)) {
            return text;
        }
        unreadable(name, text, "one of " + String.join(", ", known), usual);
        return usual;
    }

    private Optional<Integer> number(String name, String assumed) {
        Optional<String> text = parameter.apply(name).map(String::strip);
        Optional<Integer> number =
                text.filter(value -> NUMBER.matcher(value).matches()).map(Integer::valueOf);
        if (number.isEmpty()) {
            text.ifPresent(value -> unreadable(name, value, "a whole number such as 25", assumed));
        }
        return number;
    }

    private void unreadable(String name, String found, String expected, String assumed) {
        problem.accept("%s: expected %s, not “%s”; %s was assumed".formatted(name, expected, found, assumed));
    }
}
