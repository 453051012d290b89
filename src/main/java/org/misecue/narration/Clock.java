package org.misecue.narration;

import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times as people read them beside a film: {@code m:ss}, from an hour on {@code h:mm:ss}. */
public final class Clock {

    /** Nobody films longer; longer times are slips, and nearer to the limits of arithmetic. */
    static final Duration LONGEST = Duration.ofHours(100_000);

    private static final Pattern STAMP =
            Pattern.compile("(?:(\\d{1,5}):([0-5]?\\d)|(\\d{1,5})):([0-5]\\d)(?:[.,](\\d{1,9}))?");

    private Clock() {}

    /** Full seconds, not rounded up: the moment is then never past. */
    public static String hms(Duration time) {
        long seconds = Math.max(0, time.toSeconds());
        StringBuilder out = new StringBuilder();
        if (seconds >= 3600) {
            out.append(seconds / 3600).append(':');
            appendTwoDigits(out, seconds / 60 % 60);
        } else {
            out.append(seconds / 60);
        }
        out.append(':');
        appendTwoDigits(out, seconds % 60);
        return out.toString();
    }

    /**
     * Reads {@code m:ss} and {@code h:mm:ss}, with a fraction of a second if there is one. Minutes may go beyond 59 where
     * no hours are written.
     *
     * @return nothing for anything else
     */
    public static Optional<Duration> parse(String text) {
        Matcher stamp = STAMP.matcher(text.strip());
        if (!stamp.matches()) {
            return Optional.empty();
        }
        boolean withHours = stamp.group(1) != null;
        long hours = withHours ? Long.parseLong(stamp.group(1)) : 0;
        long minutes = Long.parseLong(withHours ? stamp.group(2) : stamp.group(3));
        long seconds = Long.parseLong(stamp.group(4));
        return Optional.of(Duration.ofSeconds(hours * 3600 + minutes * 60 + seconds, nanos(stamp.group(5))));
    }

    /** The same with a sign before it, "-0:02.5": how far one clock is from another. */
    public static Optional<Duration> parseSigned(String text) {
        String stripped = text.strip();
        boolean back = stripped.startsWith("-") || stripped.startsWith("\u2212");
        return parse(back || stripped.startsWith("+") ? stripped.substring(1) : stripped)
                .map(time -> back ? time.negated() : time);
    }

    /** Such a distance with full seconds, and a sign where it is backwards. */
    public static String signed(Duration distance) {
        return (distance.isNegative() ? "-" : "") + hms(distance.abs());
    }

    /** @param fraction the digits after the point, at most nine; may be missing */
    private static long nanos(@org.jspecify.annotations.Nullable String fraction) {
        return fraction == null ? 0 : Long.parseLong((fraction + "000000000").substring(0, 9));
    }

    private static void appendTwoDigits(StringBuilder out, long value) {
        if (value < 10) {
            out.append('0');
        }
        out.append(value);
    }
}
