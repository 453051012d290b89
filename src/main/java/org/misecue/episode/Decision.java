package org.misecue.episode;

import java.time.LocalDateTime;
import java.util.List;

/**
 * What was decided about one difference or doubt.
 *
 * @param about what it is about, in words that stay the same from run to run
 * @param who decided
 * @param when to the minute, on the clock of whoever decided
 * @param note why, in their words; may be empty
 * @param restsOn what was written, said and shown when it was decided; once that changes, the decision counts no more
 */
public record Decision(String about, Choice choice, String who, LocalDateTime when, String note, List<String> restsOn) {

    public Decision {
        restsOn = List.copyOf(restsOn);
    }
}
