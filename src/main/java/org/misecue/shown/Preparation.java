package org.misecue.shown;

import java.util.List;

/**
 * How a picture of a line is prepared for reading.
 *
 * @param capital how high a capital letter is made, in pixels
 * @param share of the contrast beside edges that parts letters from all that is lighter
 * @param together from what all pictures have in common, or else from their middle
 * @param hard in black and white, without what reaches the edge, or else in shades of grey
 */
record Preparation(double capital, double share, boolean together, boolean hard) {

    /** The ground of letters with an outline or a shadow is hardly lighter than they are, and the outline far lighter. */
    static final List<Double> SHARES = List.of(1.0, 0.5, 0.3, 0.18, 0.1);

    /** The first look at a line. */
    static Preparation first(double share) {
        return new Preparation(34, share, true, false);
    }

    /** What a line is read from once it is known how its letters stand out. */
    static List<Preparation> all(double share) {
        return List.of(
                first(share),
                new Preparation(30, share, false, false),
                new Preparation(42, 0.7 * share, true, false),
                new Preparation(46, 0.7 * share, false, false),
                new Preparation(40, share, false, true));
    }
}
