package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/** "Milk, what was it, two hundred? – One eighty.": what is asked stands only until somebody answers with an amount. */
final class Questions {

    private static final int QUESTION_REACH = 12;
    private static final int ASKED_BEHIND = 5;
    private static final int ANSWER_REACH = 3;
    private static final Set<String> AUXILIARIES = Words.set("did is was were do does are have has shall should will");
    private static final Set<String> SUBJECTS = Words.set("you it i we they that this he she there");

    private final Hearing heard;

    Questions(Hearing heard) {
        this.heard = heard;
    }

    /** Whether the amount is asked and the next sentence begins with one. */
    boolean isAsked(SpokenQuantity said) {
        return heard.on(Mechanism.QUESTIONS)
                && (isInQuestion(said.start()) || isTagged(said.end()))
                && isAnswered(said.end());
    }

    private boolean isInQuestion(int start) {
        for (int at = start - 1; at >= start - QUESTION_REACH; at--) {
            if (AUXILIARIES.contains(heard.words.text(at)) && SUBJECTS.contains(heard.words.text(at + 1))) {
                return true;
            }
            if (heard.words.wall(at)) {
                return false;
            }
        }
        return false;
    }

    /** "three teaspoons, was it?" */
    private boolean isTagged(int end) {
        return AUXILIARIES.contains(heard.words.text(end))
                && SUBJECTS.contains(heard.words.text(end + 1))
                && heard.words.wall(end + 2);
    }

    private boolean isAnswered(int end) {
        for (int at = end; at < end + ASKED_BEHIND; at++) {
            if (heard.words.wall(at)) {
                return !heard.quantitiesIn(at, at + ANSWER_REACH).isEmpty();
            }
        }
        return false;
    }
}
