package org.misecue.edit;

import java.time.Duration;

/**
 * How much can be read, and how fast.
 *
 * @param lineLength most signs in a line
 * @param lines most lines
 * @param shortest that a caption stands
 * @param longest that it stands
 * @param speed most signs in a second
 * @param gap between two captions, so that the eye sees that they changed
 */
public record CaptionRules(int lineLength, int lines, Duration shortest, Duration longest, int speed, Duration gap) {

    /**
     * Two lines of 42 signs, one to seven seconds, 20 signs a second: caption guides, 15 to 20 signs a second. The gap of two
     * frames at 25 is common practice, no source.
     */
    public static final CaptionRules USUAL =
            new CaptionRules(42, 2, Duration.ofSeconds(1), Duration.ofSeconds(7), 20, Duration.ofMillis(80));

    /** How many signs a caption may have that stands so long. */
    int room(Duration stands) {
        return (int) (stands.toMillis() * speed / 1000);
    }
}
