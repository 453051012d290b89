package org.misecue.compare;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenOrdinals;
import org.misecue.spoken.SpokenQuantity;

/** Amounts in parts, and what they come to. */
final class Additions {

    private static final int KEPT_REACH = 9;
    private static final int COUNT_REACH = 30;
    /** "all in all that is", "of water in the end" have five words. */
    private static final int TOTAL_REACH = 5;

    /** "more than", "more for", "more or less" add nothing. */
    private static final Set<String> NO_ADDITION = Set.of("for", "than", "or");

    private static final Set<String> LITTLE = Set.of("bit", "little", "touch", "drop", "tad", "smidge");
    private static final int ALOUD_REACH = 20;
    private static final int ORDINAL_REACH = 80;
    private static final Set<String> POINTERS = Set.of("that", "there", "makes", "now");

    private static final Set<String> STORES = Set.of("freezer", "fridge", "tomorrow", "later", "saved");
    private static final int STORE_REACH = 9;

    private final Hearing heard;
    private final Remainders remainders;

    Additions(Hearing heard) {
        this.heard = heard;
        this.remainders = new Remainders(heard);
    }

    /** "another fifty", "fifty more", "fifty of what I kept back". */
    boolean adds(Further amount) {
        if (!heard.on(Mechanism.PARTS)) {
            return false;
        }
        int end = amount.end();
        if (isStored(amount)) {
            return false;
        }
        OptionalInt before = heard.phrases.lastWithin(Kind.ADDS, amount.start() - 3, end);
        if (isUpTo(amount)) {
            return false;
        }
        boolean any =
                before.isPresent() && heard.words.text(before.getAsInt() - 1).equals("any");
        if (before.isPresent()
                && !any
                && !heard.phrases.within(Kind.NO_REPAIR, before.getAsInt() - 1, before.getAsInt() + 1)) {
            return true;
        }
        return heard.phrases.within(Kind.KEPT, end, end + KEPT_REACH)
                || isMoreBehind(end)
                || remainders.isOne(amount)
                || isFraction(amount.said(), amount.last());
    }

    /** "and the other three go in the freezer". */
    private boolean isStored(Further amount) {
        boolean other = heard.words.text(amount.start() - 1).equals("other")
                || heard.words.text(amount.start()).equals("other");
        return other && heard.words.saysAny(STORES, amount.end(), amount.end() + STORE_REACH);
    }

    /** "two cups, and a quarter cup": a fraction right behind whole ones. */
    boolean isFraction(SpokenQuantity said, Mention whole) {
        return said.start() - whole.end() == 1
                && heard.words.text(whole.end()).equals("and")
                && said.quantity()
                        .filter(part -> part.unit() == whole.quantity().unit() && isBelowOne(part))
                        .isPresent()
                && whole.quantity().amount().least().filter(Rationals::isWhole).isPresent();
    }

    private static boolean isBelowOne(Quantity quantity) {
        return quantity.amount()
                .most()
                .filter(most -> most.compareTo(Rationals.ONE) < 0)
                .isPresent();
    }

    /** "half a cup more", not "more for", "more than". */
    boolean isMoreBehind(int end) {
        return heard.phrases.endAt(Kind.ADDS, end).isPresent() && !NO_ADDITION.contains(heard.words.text(end + 1));
    }

    /** Whether "another" or the like is said right with it. */
    boolean isMore(Further amount) {
        return !isUpTo(amount) && heard.phrases.within(Kind.ADDS, amount.start() - 1, amount.start());
    }

    /** "three forty eight, a bit more, three fifty": what the scales have got to. */
    private boolean isUpTo(Further amount) {
        boolean little = heard.words.text(amount.start() - 1).equals("more")
                && LITTLE.contains(heard.words.text(amount.start() - 2));
        return little
                && heard.on(Mechanism.SCALES)
                && amount.last()
                        .quantity()
                        .amount()
                        .least()
                        .filter(amount.said()::isAtLeast)
                        .isPresent();
    }

    /** "that's one and a half all together", behind amounts of which none was the total. */
    boolean totals(Further amount) {
        return isTotal(amount.start(), amount.end())
                && !isTotal(amount.last().start(), amount.last().end());
    }

    /** Whether what is said in {@code [start, end)} is told to be all. */
    boolean isTotal(int start, int end) {
        return heard.on(Mechanism.TOTALS)
                && (heard.phrases.within(Kind.TOTAL_AFTER, end, untilNext(end))
                        || heard.phrases.within(Kind.TOTAL_BEFORE, start - TOTAL_REACH, start));
    }

    /** Before another amount, which would be the total. */
    private int untilNext(int end) {
        int next = heard.quantityFrom(end).map(SpokenQuantity::start).orElse(end + TOTAL_REACH);
        return Math.min(end + TOTAL_REACH, next);
    }

    /** "one tablespoon, stir, and two, still too stiff, so three tablespoons": each counts those before it. */
    boolean countsUp(Further amount) {
        List<Mention> own = amount.own();
        if (!heard.on(Mechanism.COUNTED_UP)) {
            return false;
        }
        if (isCountedAloud(amount)) {
            return true;
        }
        if (own.size() < 2) {
            return false;
        }
        Mention first = own.get(own.size() - 2);
        return amount.start() - first.end() <= COUNT_REACH
                && isOneMore(amount.last().quantity(), first.quantity())
                && isOneMore(amount.quantity(), amount.last().quantity());
    }

    /** "that's one cup, and that's two cups", "one cup, two cups", "there's your second cup". */
    private boolean isCountedAloud(Further amount) {
        boolean next = isOneMore(amount.quantity(), amount.last().quantity())
                && amount.start() - amount.last().end() <= (isOrdinal(amount) ? ORDINAL_REACH : ALOUD_REACH)
                && amount.quantity().dimension() == Dimension.VOLUME
                && (isOrdinal(amount)
                        || heard.namesIn(amount.last().end(), amount.start()).isEmpty());
        boolean pointed = heard.words.text(amount.start() - 1).equals("is")
                && POINTERS.contains(heard.words.text(amount.start() - 2));
        return next
                && (pointed
                        || isOrdinal(amount)
                        || amount.start() == amount.last().end());
    }

    /** "a second teaspoon". */
    private boolean isOrdinal(Further amount) {
        return SpokenOrdinals.isOne(heard.words.text(amount.start() + 1))
                || SpokenOrdinals.isOne(heard.words.text(amount.start()));
    }

    private static boolean isOneMore(Quantity more, Quantity one) {
        return more.unit() == one.unit()
                && one.amount()
                        .least()
                        .map(value -> value.add(Rationals.ONE))
                        .equals(more.amount().least());
    }
}
