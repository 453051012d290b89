package org.misecue.edit;

import java.time.Duration;

/**
 * A place in a film that somebody has to find again.
 *
 * @param at on the film's clock, 0 at its first frame
 * @param kind what it is for
 * @param name a few words, in one line
 * @param comment a sentence or two, in one line; may be empty
 */
public record Marker(Duration at, Kind kind, String name, String comment) {

    /** What a marker is for; the colours are those that the interchange formats name. */
    public enum Kind {
        STEP("step", "CYAN"),
        DIFFERS("differs", "RED"),
        LISTEN("listen", "YELLOW"),
        PICKUP("pickup", "MAGENTA"),
        COVER("cover", "BLUE");

        private final String word;
        private final String colour;

        Kind(String word, String colour) {
            this.word = word;
            this.colour = colour;
        }

        /** As files name it. */
        public String word() {
            return word;
        }

        String colour() {
            return colour;
        }
    }
}
