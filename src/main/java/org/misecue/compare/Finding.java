package org.misecue.compare;

import java.util.List;

/**
 * One written or added thing as the producer meets it.
 *
 * @param id unique in its report: "line-3", "setting-1", "added-1"
 * @param what the written line, or what was added
 * @param where component and step; empty where there is neither
 * @param verdict as a word
 * @param confidence how sure the verdict is
 * @param reason one sentence or two
 * @param caution what to mind about allergens; empty where nothing is known, which never means that there is none
 * @param evidence the moments
 */
public record Finding(
        String id,
        String what,
        String where,
        String verdict,
        Confidence confidence,
        String reason,
        String caution,
        List<Evidence> evidence) {}
