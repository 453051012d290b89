package org.misecue.compare;

import java.util.List;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** Corrections that name what they take back, however much later: "I said two teaspoons earlier, it's one". */
final class LateRepairs {

    private static final int BEFORE = 28;
    private static final int BEHIND = 8;
    private static final int CITED_BEFORE = 6;
    private static final int CITED_REACH = 50;
    private static final int DENIED_REACH = 25;
    private static final int TAKEN_BACK_BEHIND = 10;

    private final Hearing heard;

    LateRepairs(Hearing heard) {
        this.heard = heard;
    }

    boolean repairs(Further amount) {
        return heard.on(Mechanism.LATE_REPAIR) && (isLate(amount.start(), amount.end()) || isCited(amount));
    }

    /** "I said two teaspoons earlier, it's one": said of this amount or just before it. */
    private boolean isLate(int start, int end) {
        return heard.phrases.within(Kind.LATE_REPAIR, start - BEFORE, start)
                || heard.phrases.within(Kind.LATE_REPAIR, end, end + BEHIND);
    }

    /** "I told you five grams …, it's seven": however long the telling takes. */
    private boolean isCited(Further amount) {
        int told = amount.last().start();
        return amount.distance() <= CITED_REACH && heard.phrases.within(Kind.LATE_REPAIR, told - CITED_BEFORE, told);
    }

    /** "it's two, not one", "I don't know why I said thirty five, it's twenty five": what stood before is named and denied. */
    boolean takesBack(Further amount) {
        return heard.on(Mechanism.TAKEN_BACK)
                && heard.quantitiesIn(amount.start() - CITED_REACH, amount.end() + TAKEN_BACK_BEHIND).stream()
                        .filter(other -> isDeniedNear(amount, other) || isCitation(other, amount.own()))
                        .filter(other -> !other.amount()
                                .least()
                                .equals(amount.said().amount().least()))
                        .anyMatch(amount::repeats);
    }

    private static boolean isDeniedNear(Further amount, SpokenQuantity other) {
        return other.isAside(Aside.Kind.DENIED) && amount.start() - other.end() <= DENIED_REACH;
    }

    /** "… why I said thirty five": no new amount, if it was said before. */
    boolean isCitation(SpokenQuantity said, List<Mention> own) {
        return heard.phrases.endsBefore(Kind.CITES, said.start()) && Further.isSaid(said, own);
    }
}
