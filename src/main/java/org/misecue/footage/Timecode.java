package org.misecue.footage;

import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A frame's number written as hours, minutes, seconds and frames, after SMPTE ST 12. Drop-frame counting leaves out
 * numbers, never pictures: at 29.97 the numbers ;00 and ;01 at the start of each minute except each tenth, at 59.94
 * twice as many, so that the label keeps up with the clock on the wall.
 *
 * @param rate how fast the frames run
 * @param dropFrame only for 30000/1001 and 60000/1001
 * @param frame from 0; a day later the count starts again
 */
public record Timecode(FrameRate rate, boolean dropFrame, long frame) {

    private static final Pattern WRITTEN = Pattern.compile("(\\d\\d):([0-5]\\d):([0-5]\\d)([:;.])(\\d\\d)");

    public Timecode {
        if (dropFrame && !canDrop(rate)) {
            throw new IllegalArgumentException("drop-frame counting is for 30000/1001 and 60000/1001, not " + rate);
        }
        frame = Math.floorMod(frame, framesPerDay(rate, dropFrame));
    }

    /**
     * Reads {@code 01:00:00:00}, or {@code 01:00:00;00} for drop-frame counting.
     *
     * @throws IllegalArgumentException for anything else, and for a number that the counting leaves out
     */
    public static Timecode parse(String text, FrameRate rate) {
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            throw new IllegalArgumentException("'" + text + "' is no time code such as 01:00:00:00");
        }
        int hours = Integer.parseInt(written.group(1));
        int minutes = Integer.parseInt(written.group(2));
        int seconds = Integer.parseInt(written.group(3));
        int frames = Integer.parseInt(written.group(5));
        boolean drops = !":".equals(written.group(4));
        if (hours > 23 || frames >= rate.counted()) {
            throw new IllegalArgumentException("'" + text + "' is no time code at " + rate + " frames per second");
        }
        long number = (hours * 3600L + minutes * 60L + seconds) * rate.counted() + frames;
        if (drops && canDrop(rate)) {
            if (seconds == 0 && minutes % 10 != 0 && frames < droppedPerMinute(rate)) {
                throw new IllegalArgumentException("'" + text + "' is left out in drop-frame counting");
            }
            long minutesGone = hours * 60L + minutes;
            number -= droppedPerMinute(rate) * (minutesGone - minutesGone / 10);
        }
        return new Timecode(rate, drops, number);
    }

    /** The label of the frame that is on screen so long after this one begins. */
    public Timecode plus(Duration later) {
        return new Timecode(rate, dropFrame, frame + rate.frameAt(later));
    }

    /** The label read as hours, minutes and seconds of a clock. */
    Duration asClock() {
        long number = number();
        return Duration.ofSeconds(number / rate.counted()).plus(rate.startOf(number % rate.counted()));
    }

    /** How long it takes until the same label comes again. */
    Duration day() {
        return rate.startOf(framesPerDay(rate, dropFrame));
    }

    @Override
    public String toString() {
        long number = number();
        int counted = rate.counted();
        long seconds = number / counted;
        return "%02d:%02d:%02d%s%02d"
                .formatted(seconds / 3600, seconds / 60 % 60, seconds % 60, dropFrame ? ";" : ":", number % counted);
    }

    private long number() {
        return dropFrame ? frame + numbersLeftOut() : frame;
    }

    private long numbersLeftOut() {
        int dropped = droppedPerMinute(rate);
        long shortMinute = rate.counted() * 60L - dropped;
        long tenMinutes = shortMinute * 10 + dropped;
        long inTen = frame % tenMinutes;
        // The first of the ten minutes keeps all its numbers and is longer by those that the others leave out.
        long minutesBegun = inTen < shortMinute + dropped ? 0 : (inTen - dropped) / shortMinute;
        return dropped * (frame / tenMinutes * 9 + minutesBegun);
    }

    private static boolean canDrop(FrameRate rate) {
        return rate.seconds() == 1001 && (rate.frames() == 30000 || rate.frames() == 60000);
    }

    private static int droppedPerMinute(FrameRate rate) {
        return rate.counted() / 15;
    }

    private static long framesPerDay(FrameRate rate, boolean dropFrame) {
        long all = rate.counted() * 86_400L;
        return dropFrame ? all - droppedPerMinute(rate) * 24L * 54 : all;
    }
}
