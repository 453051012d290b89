package org.misecue.compare;

import java.util.List;
import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;

/**
 * The last part of an amount: "first forty, and the remaining water, twenty", "the balance, twenty five mils", or what was
 * held back of it when the first part went in.
 */
final class Remainders {

    private static final int NAME_REACH = 6;
    private static final int NAME_LENGTH = 4;
    private static final int BEFORE_REACH = 4;
    private static final Set<String> BEFORE_NOW = Set.of("already", "earlier", "before", "had", "was", "went");
    private static final int FIRST_REACH = 12;

    private final Hearing heard;

    Remainders(Hearing heard) {
        this.heard = heard;
    }

    boolean isOne(Further amount) {
        return heard.phrases.endsBefore(Kind.REMAINDER, amount.start()) || isOfNamed(amount) || isHeldBack(amount);
    }

    /** "the remaining water also goes in, twenty mils", not "the rest of the water, I put forty in already". */
    private boolean isOfNamed(Further amount) {
        if (heard.words.saysAny(BEFORE_NOW, amount.start() - NAME_REACH, amount.end() + BEFORE_REACH)) {
            return false;
        }
        int line = amount.last().line();
        List<NameHit> before = heard.namesIn(amount.start() - NAME_REACH - NAME_LENGTH, amount.start());
        return before.stream()
                .filter(name -> name.lines().contains(line) && amount.start() - name.end() <= NAME_REACH)
                .anyMatch(name -> heard.phrases.endsBefore(Kind.REMAINDER, name.start()));
    }

    /** "two hundred in now, and I'll hold on to fifty": of the whole only if the first part is told to be one. */
    private boolean isHeldBack(Further amount) {
        return heard.phrases.endsBefore(Kind.HOLDS_BACK, amount.start())
                && heard.phrases.within(Kind.FIRST_PORTION, amount.last().start() - 3, amount.start())
                && amount.own().size() == 1
                && amount.distance() <= FIRST_REACH;
    }
}
