package org.misecue.narration;

import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** WebVTT timestamps: hours of any number of digits or none, then always two, two and three digits. */
final class WebVttTime {

    private static final String STAMP = "(?:(\\d+):)?([0-5]\\d):([0-5]\\d)\\.(\\d{3})";
    private static final String SPACE = "[ \\t\\f]*";
    private static final Pattern ONE = Pattern.compile(STAMP);
    private static final Pattern SPAN =
            Pattern.compile(SPACE + STAMP + "(?!\\d)" + SPACE + "-->" + SPACE + STAMP + "(?!\\d).*", Pattern.DOTALL);

    /** More digits than these are no hours of a film; the standard sets no limit. */
    private static final int MOST_HOUR_DIGITS = 9;

    private WebVttTime() {}

    /** As written: the end may lie before the start. */
    record Span(Duration start, Duration end) {}

    /** @param line such as {@code 00:01.000 --> 00:02.500 align:start}; what follows the times is settings */
    static Optional<Span> span(String line) {
        Matcher span = SPAN.matcher(line);
        if (!span.matches()) {
            return Optional.empty();
        }
        return time(span, 0).flatMap(start -> time(span, 4).map(end -> new Span(start, end)));
    }

    static Optional<Duration> stamp(String text) {
        Matcher stamp = ONE.matcher(text);
        return stamp.matches() ? time(stamp, 0) : Optional.empty();
    }

    private static Optional<Duration> time(Matcher found, int before) {
        String written = found.group(before + 1);
        String hours = written == null ? "0" : written.replaceFirst("^0+(?=\\d)", "");
        if (hours.length() > MOST_HOUR_DIGITS) {
            return Optional.empty();
        }
        return Optional.of(Duration.ofHours(Long.parseLong(hours))
                .plusMinutes(Long.parseLong(found.group(before + 2)))
                .plusSeconds(Long.parseLong(found.group(before + 3)))
                .plusMillis(Long.parseLong(found.group(before + 4))));
    }
}
