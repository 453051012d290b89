package org.misecue.narration;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the root of a TTML document says of its times, with the defaults of TTML1 ("Parameter Attributes", from memory). */
final class TtmlParameters {

    private static final int FRAME_RATE = 30;
    private static final Pattern NUMBER = Pattern.compile("[1-9]\\d{0,8}");
    private static final Pattern MULTIPLIER = Pattern.compile("([1-9]\\d{0,8})[ :]([1-9]\\d{0,8})");

    private TtmlParameters() {}

    /** @param parameter the value of an attribute such as {@code frameRate}; what cannot be read counts as not there */
    static TtmlClock clock(Function<String, Optional<String>> parameter) {
        Optional<Integer> frameRate = number(parameter.apply("frameRate"));
        int counted = frameRate.orElse(FRAME_RATE);
        BigDecimal rate = BigDecimal.valueOf(counted);
        Optional<Matcher> multiplier = parameter
                .apply("frameRateMultiplier")
                .map(text -> MULTIPLIER.matcher(text.strip()))
                .filter(Matcher::matches);
        if (multiplier.isPresent()) {
            rate = rate.multiply(new BigDecimal(multiplier.get().group(1)))
                    .divide(new BigDecimal(multiplier.get().group(2)), MathContext.DECIMAL64);
        }
        int subFrames = number(parameter.apply("subFrameRate")).orElse(1);
        BigDecimal ticks = number(parameter.apply("tickRate"))
                .map(BigDecimal::valueOf)
                .orElse(frameRate.isPresent() ? rate.multiply(BigDecimal.valueOf(subFrames)) : BigDecimal.ONE);
        return new TtmlClock(rate, counted, subFrames, ticks, counting(parameter));
    }

    private static TtmlClock.Counting counting(Function<String, Optional<String>> parameter) {
        if (!parameter.apply("timeBase").equals(Optional.of("smpte"))) {
            return TtmlClock.Counting.MEDIA;
        }
        return parameter.apply("dropMode").equals(Optional.of("dropNTSC"))
                ? TtmlClock.Counting.SMPTE_DROP
                : TtmlClock.Counting.SMPTE;
    }

    private static Optional<Integer> number(Optional<String> text) {
        return text.map(String::strip)
                .filter(value -> NUMBER.matcher(value).matches())
                .map(Integer::valueOf);
    }
}
