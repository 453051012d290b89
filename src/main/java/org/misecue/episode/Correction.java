package org.misecue.episode;

import java.time.Duration;
import java.time.LocalDateTime;
import org.misecue.narration.Clock;
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

    /** "At 3:20 in narration/main.vtt Nell heard “one hundred” where “two hundred” was written (2026-05-04 10:00)." */
    public String sentence() {
        return "At %s in %s %s heard %s where “%s” was written (%s)."
                .formatted(
                        Clock.hms(mend.at()),
                        narration,
                        who.isEmpty() ? "somebody" : who,
                        mend.heard().isEmpty() ? "nothing" : "“" + mend.heard() + "”",
                        mend.was(),
                        Decisions.minute(when));
    }

    /** The same on another clock. */
    public Correction moved(Duration offset) {
        return new Correction(narration, mend.moved(offset), who, when);
    }

    /** Whether it changes what an earlier one put in. */
    boolean corrects(Correction earlier) {
        return narration.equals(earlier.narration) && mend.corrects(earlier.mend);
    }

    /** Both in one. */
    Correction behind(Correction earlier) {
        return new Correction(narration, new Mend(mend.at(), earlier.mend.was(), mend.heard()), who, when);
    }

    /** Whether both are about the same words. */
    boolean isAboutSame(Correction other) {
        return narration.equals(other.narration)
                && mend.at().equals(other.mend.at())
                && mend.was().equals(other.mend.was());
    }
}
