package org.misecue.desk.check;

import java.util.List;
import org.misecue.episode.Correction;
import org.misecue.episode.Corrections;
import org.misecue.worktop.Stretch;
import org.misecue.worktop.Worktop;

/**
 * A place that somebody corrected by ear. It is shown wherever it counts, because it can hide a slip.
 *
 * @param correction as it is kept, on the clock of the narration's file
 * @param onFilm the same on the film's clock
 * @param counts whether the words that it corrects are still there
 */
public record Heard(Correction correction, Correction onFilm, boolean counts) {

    static List<Heard> all(Worktop worktop) {
        return new Corrections(worktop.episode())
                .read().stream()
                        .map(one -> new Heard(one, worktop.onFilm(one), worktop.isPutIn(one)))
                        .toList();
    }

    boolean isWithin(Stretch stretch) {
        return counts
                && correction.narration().equals(stretch.source())
                && stretch.covers(onFilm.mend().at());
    }

    public String sentence() {
        return onFilm.sentence()
                + (counts ? "" : " It is left out: these words are no longer said there; listen again.");
    }

    /** When its words begin, to the last fraction of a second. */
    public String at() {
        return Corrections.exact(correction.mend().at());
    }
}
