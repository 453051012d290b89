package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Words;

/** "Don't go mad or it'll be butter", "it turns to caramel": what something becomes goes nowhere. */
final class Outcomes {

    private static final int OR_REACH = 4;
    private static final Set<String> BECOMING = Set.of("become", "becomes", "became");
    private static final Set<String> TURNING = Words.set("turn turns turned turning goes go went back");
    private static final Set<String> INTO = Set.of("to", "into");
    private static final Set<String> HAVING = Words.set("be have got make made making is");
    private static final Set<String> SUBJECTS = Words.set("it it'll you you'll you've they they'll that");

    private final Hearing heard;

    Outcomes(Hearing heard) {
        this.heard = heard;
    }

    boolean isOne(NameHit name) {
        int at = name.start() - 1;
        return heard.on(Mechanism.OUTCOMES) && (isEnd(at) || isEnd(at - 1));
    }

    private boolean isEnd(int at) {
        String word = heard.words.text(at);
        return BECOMING.contains(word)
                || (INTO.contains(word) && TURNING.contains(heard.words.text(at - 1)) && isTurned(at - 1))
                || (HAVING.contains(word) && isOtherwise(at));
    }

    /** "goes back to sugar", "turns to butter"; what goes into the butter becomes nothing. */
    private boolean isTurned(int at) {
        return heard.words.text(at).startsWith("turn") || heard.words.text(at).equals("back");
    }

    /** "or it'll be", "or you've got". */
    private boolean isOtherwise(int at) {
        for (int or = at - 1; or >= at - OR_REACH; or--) {
            if (heard.words.text(or).equals("or")) {
                return SUBJECTS.contains(heard.words.text(or + 1));
            }
        }
        return false;
    }
}
