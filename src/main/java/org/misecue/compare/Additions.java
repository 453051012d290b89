package org.misecue.compare;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;

/** Amounts in parts, and what they come to. */
final class Additions {

    private static final int KEPT_REACH = 9;
    private static final int COUNT_REACH = 30;
    private static final int TOTAL_REACH = 4;

    /** "more than", "more for", "more or less" add nothing. */
    private static final Set<String> NO_ADDITION = Set.of("for", "than", "or");

    private final Hearing heard;

    Additions(Hearing heard) {
        this.heard = heard;
    }

    /** "another fifty", "fifty more", "fifty of what I kept back". */
    boolean adds(Further amount) {
        if (!heard.on(Mechanism.PARTS)) {
            return false;
        }
        int end = amount.end();
        OptionalInt before = heard.phrases.lastWithin(Kind.ADDS, amount.start() - 3, end);
        if (before.isPresent() && !heard.phrases.within(Kind.NO_REPAIR, before.getAsInt() - 1, before.getAsInt() + 1)) {
            return true;
        }
        return heard.phrases.within(Kind.KEPT, end, end + KEPT_REACH)
                || (heard.phrases.endAt(Kind.ADDS, end).isPresent()
                        && !NO_ADDITION.contains(heard.words.text(end + 1)));
    }

    /** Whether "another" or the like is said right with it. */
    boolean isMore(Further amount) {
        return heard.phrases.within(Kind.ADDS, amount.start() - 1, amount.start());
    }

    /** "that's one and a half all together", behind amounts of which none was the total. */
    boolean totals(Further amount) {
        return isTotal(amount.start(), amount.end())
                && !isTotal(amount.last().start(), amount.last().end());
    }

    /** Whether what is said in {@code [start, end)} is told to be all. */
    boolean isTotal(int start, int end) {
        return heard.on(Mechanism.TOTALS)
                && (heard.phrases.within(Kind.TOTAL_AFTER, end, end + TOTAL_REACH)
                        || heard.phrases.within(Kind.TOTAL_BEFORE, start - TOTAL_REACH, start));
    }

    /** "one tablespoon, stir, and two, still too stiff, so three tablespoons": each counts those before it. */
    boolean countsUp(Further amount) {
        List<Mention> own = amount.own();
        if (own.size() < 2 || !heard.on(Mechanism.COUNTED_UP)) {
            return false;
        }
        Mention first = own.get(own.size() - 2);
        return amount.start() - first.end() <= COUNT_REACH
                && isOneMore(amount.last().quantity(), first.quantity())
                && isOneMore(amount.quantity(), amount.last().quantity());
    }

    private static boolean isOneMore(Quantity more, Quantity one) {
        return more.unit() == one.unit()
                && one.amount()
                        .least()
                        .map(value -> value.add(Rationals.ONE))
                        .equals(more.amount().least());
    }
}
