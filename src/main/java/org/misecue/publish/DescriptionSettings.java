package org.misecue.publish;

import java.util.Locale;
import org.misecue.quantity.Household;

/**
 * How a description is to be written.
 *
 * @param measures which measures its lines give, and which comes first
 * @param household whose cups and spoons
 * @param emphasis how allergens stand out
 * @param method whether the method is in it
 * @param limit the most characters the box takes; at least 1. Counted as UTF-16 units, as a page's own text boxes count
 *     ("maxlength" of HTML; from memory); a box that counts whole characters instead never counts more
 * @param links what becomes of web addresses in it
 * @param language of its headings, labels, numbers and units
 */
public record DescriptionSettings(
        Measures measures,
        Household household,
        Emphasis emphasis,
        boolean method,
        int limit,
        Links links,
        Locale language) {

    /** The size of the box on the large hosts: common practice, no source. */
    public static final int USUAL_LIMIT = 5000;

    public DescriptionSettings {
        if (limit < 1) {
            throw new IllegalArgumentException("the limit of a description must be at least 1 character, not " + limit);
        }
    }

    /** Metric first with US label cups, the method, 5000 characters, no addresses, English. */
    public static DescriptionSettings usual() {
        return new DescriptionSettings(
                Measures.METRIC_FIRST,
                Household.US_LABEL,
                Emphasis.CAPITALS,
                true,
                USUAL_LIMIT,
                Links.DROP,
                Locale.ENGLISH);
    }

    public DescriptionSettings withLimit(int characters) {
        return new DescriptionSettings(measures, household, emphasis, method, characters, links, language);
    }

    public DescriptionSettings withMeasures(Measures other) {
        return new DescriptionSettings(other, household, emphasis, method, limit, links, language);
    }

    public DescriptionSettings withEmphasis(Emphasis other) {
        return new DescriptionSettings(measures, household, other, method, limit, links, language);
    }

    public DescriptionSettings withLinks(Links other) {
        return new DescriptionSettings(measures, household, emphasis, method, limit, other, language);
    }

    public DescriptionSettings withLanguage(Locale other) {
        return new DescriptionSettings(measures, household, emphasis, method, limit, links, other);
    }
}
