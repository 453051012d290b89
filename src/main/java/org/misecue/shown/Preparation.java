package org.misecue.shown;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How a picture of a line is prepared for reading.
 *
 * @param capital how high a capital letter is made, in pixels
 * @param setOff how letters are told from their ground
 * @param together from what all pictures have in common, or else from their middle
 * @param black below which shade all is black and the rest white, without what reaches the edge; {@link #GREY} for
 *     shades of grey
 */
record Preparation(double capital, SetOff setOff, boolean together, int black) {

    static final int GREY = 0;
    private static final int HALF = 140;
    /** Where a shadow lies close, the gap that tells a 5 from a 3 is seen in the darkest only. */
    private static final int[] DARKEST = {96, 48};

    /**
     * How letters stand out.
     *
     * @param share of the contrast beside edges that parts letters from all that is lighter
     * @param filled what lies within outlines is the letters, however light the ground is
     */
    record SetOff(double share, boolean filled) {

        static final SetOff PLAIN = new SetOff(1, false);
        static final SetOff FILLED = new SetOff(1, true);

        SetOff nearer(double by) {
            return new SetOff(by * share, filled);
        }
    }

    private static final SetOff FAINT = new SetOff(0.18, false);

    /** The ground of letters with an outline or a shadow is hardly lighter than they are, and the outline far lighter. */
    static final List<SetOff> WAYS = List.of(
            SetOff.PLAIN, new SetOff(0.5, false), new SetOff(0.3, false), FAINT, new SetOff(0.1, false), SetOff.FILLED);

    /** The first look at a line. */
    static Preparation first(SetOff setOff) {
        return new Preparation(34, setOff, true, GREY);
    }

    boolean hard() {
        return black != GREY;
    }

    /** What a line is read from once it is known how its letters stand out. */
    static List<Preparation> all(SetOff setOff) {
        return List.of(
                first(setOff),
                new Preparation(30, setOff, false, GREY),
                new Preparation(42, setOff.nearer(0.7), true, GREY),
                new Preparation(46, setOff.nearer(0.7), false, GREY),
                // Filled, the gap of a 3 on a white ground may look like the hole of an 8: not filled, it is no hole.
                setOff.filled() ? first(FAINT) : new Preparation(40, setOff, false, HALF));
    }

    /** What figures are read from once more that seemed sure: only what is darkest. */
    static List<Preparation> witnesses(SetOff setOff) {
        return IntStream.of(DARKEST)
                .boxed()
                .flatMap(black -> Stream.of(
                        new Preparation(40, setOff, false, black),
                        new Preparation(46, setOff.nearer(0.7), true, black)))
                .toList();
    }
}
