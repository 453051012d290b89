package org.misecue.episode;

import java.time.LocalDateTime;
import org.misecue.narration.Mend;

/**
 * What somebody heard where the recogniser wrote something else.
 *
 * @param narration the file, such as {@code narration/main.vtt}
 * @param mend the words and what is really said
 * @param who heard it
 * @param when to the minute
 */
public record Correction(String narration, Mend mend, String who, LocalDateTime when) {

    /** Whether both are about the same words. */
    boolean isAboutSame(Correction other) {
        return narration.equals(other.narration)
                && mend.at().equals(other.mend.at())
                && mend.was().equals(other.mend.was());
    }
}
