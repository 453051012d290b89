package org.misecue.worktop;

import java.util.ArrayList;
import java.util.List;
import org.misecue.align.Alignment;
import org.misecue.align.StepSpan;
import org.misecue.notice.BadInput;
import org.misecue.search.Passage;
import org.misecue.shots.Shot;

/** The shots of the list, found by what must be seen in them, at the time when their step is on. */
final class ShotPassages {

    private ShotPassages() {}

    /** None where shots cannot be planned: whoever asks for the list is told why. */
    static List<Passage> of(Worktop worktop, Alignment alignment) {
        List<Shot> shots;
        try {
            shots = worktop.shots().shots();
        } catch (BadInput e) {
            return List.of();
        }
        List<Passage> passages = new ArrayList<>();
        for (Shot shot : shots) {
            alignment
                    .begin(shot.step())
                    .filter(span -> span.step() > 0)
                    .ifPresent(span -> passages.add(passage(shot, span)));
        }
        return passages;
    }

    private static Passage passage(Shot shot, StepSpan span) {
        return Passage.shot(
                shot.step(), "Shot " + shot.number() + ": " + shot.see(), span.source(), span.start(), span.end());
    }
}
