package org.misecue.compare;

import java.util.List;
import java.util.Optional;

/**
 * The way from the words to the verdict on one written line or setting, for whoever asks why a verdict came out as it did.
 * {@link Comparer#explain} makes it. Every sentence is plain English and stands alone; a figure in brackets says how well
 * an amount and a name go together, on the scale that {@link JourneyText} explains.
 *
 * @param what the line as written, or the setting: "175 g unsalted butter", "Oven: 180 °C"
 * @param where component and step; empty where there is neither
 * @param verdict what {@link Comparer#compare} says of it; empty for a line that states no amount
 * @param confidence how sure the verdict is
 * @param stops what was heard for it, in the order of the narration
 * @param outcome how the stops come to the verdict: what stands in the end, the batch, the figure it is held against, why
 *     it is as sure as it is
 * @param nearBy amounts that were heard close to its name and went elsewhere
 */
public record Journey(
        String what,
        String where,
        Optional<Verdict> verdict,
        Confidence confidence,
        List<Stop> stops,
        List<String> outcome,
        List<Stop> nearBy) {

    /**
     * One amount on the way.
     *
     * @param evidence the moment, the words around it and the amount as understood
     * @param sentence what became of it and why
     */
    public record Stop(Evidence evidence, String sentence) {}
}
