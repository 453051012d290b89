package org.misecue.compare;

/**
 * How sure the comparison is of a verdict, for sorting what to listen to: the words around the amount, whether its name was
 * near, whether anything else was said that could have been meant.
 *
 * @param percent from 0, a guess, to 100, no doubt; an order, not a probability
 */
public record Confidence(int percent) implements Comparable<Confidence> {

    public static final Confidence FULL = new Confidence(100);
    public static final Confidence NONE = new Confidence(0);

    /** Below this a verdict is for listening to, whatever it says. */
    private static final int ENOUGH = 60;

    public Confidence {
        if (percent < 0 || percent > 100) {
            throw new IllegalArgumentException("A confidence lies between 0 and 100, not at " + percent + ".");
        }
    }

    /** Whether somebody should listen before they believe the verdict. */
    public boolean isLow() {
        return percent < ENOUGH;
    }

    @Override
    public int compareTo(Confidence other) {
        return Integer.compare(percent, other.percent);
    }
}
