package org.misecue.publish;

import org.misecue.quantity.Household;

/**
 * How a description is to be written.
 *
 * @param measures which measures its lines give, and which comes first
 * @param household whose cups and spoons
 * @param emphasis how allergens stand out
 * @param method whether the short method is in it: the first sentence of each step
 * @param limit the most characters the box takes, counted as UTF-16 units; at least 1
 */
public record DescriptionSettings(
        Measures measures, Household household, Emphasis emphasis, boolean method, int limit) {

    /** The size of the box on the large hosts: common practice, no source. */
    public static final int USUAL_LIMIT = 5000;

    public DescriptionSettings {
        if (limit < 1) {
            throw new IllegalArgumentException("the limit of a description must be at least 1 character, not " + limit);
        }
    }

    /** Metric first with US label cups, the short method, 5000 characters. */
    public static DescriptionSettings usual() {
        return new DescriptionSettings(Measures.METRIC_FIRST, Household.US_LABEL, Emphasis.CAPITALS, true, USUAL_LIMIT);
    }

    public DescriptionSettings withLimit(int characters) {
        return new DescriptionSettings(measures, household, emphasis, method, characters);
    }

    public DescriptionSettings withMeasures(Measures other) {
        return new DescriptionSettings(other, household, emphasis, method, limit);
    }
}
