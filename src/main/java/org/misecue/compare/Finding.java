package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Quantity;

/**
 * One written or added thing as the producer meets it.
 *
 * @param id unique in its report: "line-3", "setting-1", "added-1"
 * @param about what it is about, in words that stay the same when amounts, steps or times change: "cake: unsalted butter",
 *     "bake (2)", "added: ground cardamom"; unique in its report
 * @param subject what kind of thing it is
 * @param name the ingredient, or what a setting is called: "unsalted butter", "bake"
 * @param what the written line, or what was added
 * @param where component and step; empty where there is neither
 * @param verdict as a word
 * @param confidence how sure the verdict is
 * @param reason one sentence or two
 * @param caution what to mind about allergens; empty where nothing is known, which never means that there is none
 * @param written the amount that is written, where there is one
 * @param evidence the moments
 */
public record Finding(
        String id,
        String about,
        Subject subject,
        String name,
        String what,
        String where,
        String verdict,
        Confidence confidence,
        String reason,
        String caution,
        Optional<Quantity> written,
        List<Evidence> evidence) {

    /** What a finding can be about. */
    public enum Subject {
        LINE,
        OVEN,
        TIME,
        TIN,
        YIELD,
        /** An ingredient that no line has. */
        ADDED,
        /** An amount on screen that fits nothing. */
        SHOWN,
        CLAIM
    }
}
