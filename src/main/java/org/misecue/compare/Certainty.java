package org.misecue.compare;

/**
 * From the grounds of a verdict to the confidence in it. The figures put verdicts in an order for listening; they were
 * chosen by us and fitted to nothing. What matters is that one weak ground alone brings a verdict to the listening
 * list only when its amount was barely near enough to its name.
 */
final class Certainty {

    /** What is left where the name was just near enough to its amount to count. */
    private static final int JUST_ENOUGH = 50;

    /** A recogniser may have dropped the amount: silence is never quite sure. */
    private static final int SILENCE = 90;

    private static final int FIRST_STRAY = 40;
    private static final int EACH_STRAY = 10;
    private static final int LEAST = 5;

    private Certainty() {}

    /** Of an amount that was said. */
    static Confidence of(Grounds grounds) {
        double share = (grounds.score() - Scoring.ENOUGH) / (Scoring.SURE - Scoring.ENOUGH);
        double percent = JUST_ENOUGH + (100 - JUST_ENOUGH) * Math.max(-0.5, Math.min(1, share));
        percent -= grounds.doubts().stream().mapToInt(Doubt::cost).sum();
        return confidence(percent);
    }

    /**
     * Of a thing of which nobody says how much.
     *
     * @param strays amounts near its name that found no home and could have been meant
     */
    static Confidence ofSilence(int strays) {
        return confidence(strays == 0 ? SILENCE : SILENCE - FIRST_STRAY - EACH_STRAY * (strays - 1));
    }

    private static Confidence confidence(double percent) {
        return new Confidence((int) Math.round(Math.max(LEAST, percent)));
    }
}
