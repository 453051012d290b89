package org.misecue.publish;

/** Which measures a published line gives. */
public enum Measures {
    /** Grams first, cups and spoons in brackets: "175 g (¾ cup)". */
    METRIC_FIRST,
    /** Cups and spoons first, grams in brackets. */
    HOUSEHOLD_FIRST,
    METRIC_ONLY,
    HOUSEHOLD_ONLY;

    /** The first of the two alone. */
    Measures only() {
        return switch (this) {
            case METRIC_FIRST, METRIC_ONLY -> METRIC_ONLY;
            case HOUSEHOLD_FIRST, HOUSEHOLD_ONLY -> HOUSEHOLD_ONLY;
        };
    }
}
