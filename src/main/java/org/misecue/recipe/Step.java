package org.misecue.recipe;

import java.time.Duration;
import java.util.List;

/**
 * One step of the method.
 *
 * @param number from 1
 * @param text as written
 * @param line where it stands in the file, from 1; 0 where the document has no lines
 * @param uses the ingredients it uses
 * @param settings oven temperatures, durations and tins that it states
 * @param techniques what is done, as keys of the shot templates: "cream", "fold", "bake"; in the order of the text
 * @param handsOn an estimate of the time somebody is busy
 * @param unattended baking, proving, chilling, cooling: nobody needed
 */
public record Step(
        int number,
        String text,
        int line,
        List<Use> uses,
        List<Setting> settings,
        List<String> techniques,
        Duration handsOn,
        Duration unattended) {}
