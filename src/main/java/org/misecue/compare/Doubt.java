package org.misecue.compare;

/**
 * What makes a verdict less sure, with what it takes from the confidence. The figures put verdicts in an order for
 * listening; they were chosen by us and fitted to nothing.
 */
enum Doubt {
    ASSUMED_UNIT(15, "only the number is said"),
    HEDGED(10, "the speaker hedges"),
    /** Two amounts were said and neither was taken back. */
    CONTRADICTED(30, "two amounts contradict each other"),
    /** It was corrected when viewers had long heard something else. */
    CORRECTED_LATE(15, "the correction comes more than two minutes later"),
    /** It was only read out, and what the hand does may be another amount that was heard behind it. */
    ONLY_READ_OUT(45, "it is read from the sheet, and another amount that would fit is heard behind it"),
    /** It would agree by the tablespoon of another country, and nobody says whose it is. */
    WHOSE_SPOON(45, "it depends on whose tablespoon is meant");

    private final int cost;
    private final String words;

    Doubt(int cost, String words) {
        this.cost = cost;
        this.words = words;
    }

    /** In percent of all confidence. */
    int cost() {
        return cost;
    }

    /** As a clause behind "because". */
    String words() {
        return words;
    }
}
