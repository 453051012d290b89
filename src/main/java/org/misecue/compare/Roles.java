package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** What an amount does to the amount that stood before it: states, adds, corrects, totals. */
final class Roles {

    /** How far behind an amount a repair of it may come without saying that it is one. */
    private static final int REPAIR_REACH = 40;

    private static final int WEAK_REPAIR_REACH = 14;
    private static final int LATE_AHEAD = 8;
    private static final int LATE_REACH = 28;
    private static final int CITED_REACH = 50;
    private static final int OTHER_WORDS = 6;
    private static final int KEPT_REACH = 9;
    private static final int STOCK_REACH = 6;
    private static final int COUNT_REACH = 30;
    private static final int DENIED_REACH = 25;
    private static final int TAKEN_BACK_BEHIND = 10;
    private static final int NARROWED_REACH = 10;
    private static final int PRESCRIBED_REACH = 7;
    private static final Set<String> ARTICLES = Set.of("a", "an");
    private static final int SCALE_REACH = 24;
    private static final RationalNumber SMALLEST_ON_SCALES = Rationals.of(20);
    private static final Set<String> EQUATING =
            Words.set("which is that so about or roughly equals comes to works out at it about a be in around and");
    private static final int RESTART_REACH = 5;

    /** Words that repair only when the new amount comes soon. */
    private static final Set<String> WEAK = Words.set("no nope actually rather wait sorry");

    /** What may follow a "no" that takes something back; before anything else it is a plain word. */
    private static final Set<String> AFTER_NO = Words.set(
            "it that i wait sorry not no hang hold tell don't you make scratch what is let so actually there we well um "
                    + "uh er erm oh a an that's the they it's but");

    private final Hearing heard;

    Roles(Hearing heard) {
        this.heard = heard;
    }

    /**
     * @param own the mentions of the same line before this one, at least one
     */
    Role of(SpokenQuantity said, Quantity quantity, List<Mention> own) {
        Mention last = own.get(own.size() - 1);
        int start = said.start();
        int end = said.end();
        if (isTotal(start, end) && !isTotal(last.start(), last.end())) {
            return Role.CORRECTS;
        }
        boolean more = heard.phrases.within(Kind.ADDS, start - 1, start);
        if (!more && isReadOff(said, last)) {
            return Role.CORRECTS;
        }
        if (isCountedUp(said, quantity, own)) {
            return Role.CORRECTS;
        }
        if (adds(start, end)) {
            return Role.ADDS;
        }
        boolean near = start - last.end() <= REPAIR_REACH;
        if (isInOtherWords(said, quantity, last)) {
            return Role.RESTATES;
        }
        if (isShareOf(said, quantity, last)) {
            return Role.CORRECTS;
        }
        if (near && isRepaired(repairedFrom(own), start)) {
            return Role.CORRECTS;
        }
        if (isNarrowed(said, last)) {
            return Role.CORRECTS;
        }
        if (isTakenBack(said, own)) {
            return Role.CORRECTS;
        }
        if (isLate(start, end) || isCited(last, start)) {
            return Role.CORRECTS;
        }
        return isRestart(said, last) ? Role.CORRECTS : Role.STATES;
    }

    /** "an egg" may be any egg, until a number is said. */
    boolean isOneByArticle(SpokenQuantity said) {
        return said.manner() == Manner.BARE
                && ARTICLES.contains(heard.words.text(said.start()))
                && said.end() == said.start() + 1;
    }

    /** "it's supposed to be three", "the recipe says three", "I've always put three": it stands until somebody does otherwise. */
    boolean isPrescribed(SpokenQuantity said) {
        return isOneByArticle(said)
                || heard.phrases.within(Kind.STOCK, said.end(), said.end() + STOCK_REACH)
                || heard.phrases.within(Kind.PRESCRIBED, said.start() - PRESCRIBED_REACH, said.start());
    }

    /** "four tablespoons in the dish, only half of that goes on". */
    static boolean isOnlyPart(SpokenQuantity share, Hearing heard) {
        return share.manner() == Manner.SHARE
                && heard.words.text(share.start() - 1).equals("only");
    }

    /** Where a repair may have begun: "No wait. Three was how she made it, two": the three repaired nothing yet. */
    static int repairedFrom(List<Mention> own) {
        Mention last = own.get(own.size() - 1);
        if (last.role() == Role.CORRECTS && own.size() > 1) {
            Mention before = own.get(own.size() - 2);
            if (before.quantity().equals(last.quantity()) && last.start() - before.end() <= REPAIR_REACH) {
                return before.end();
            }
        }
        return last.end();
    }

    /** "a heaped tablespoon, which is twenty five grams": one amount in two measures. */
    private boolean isInOtherWords(SpokenQuantity said, Quantity quantity, Mention last) {
        if (quantity.unit() == last.quantity().unit()) {
            return false;
        }
        boolean points = heard.words.text(said.start() - 1).equals("is")
                && Set.of("that", "which").contains(heard.words.text(said.start() - 2))
                && said.start() - last.end() <= WEAK_REPAIR_REACH
                && heard.namesIn(last.end(), said.start()).isEmpty();
        if (points) {
            return true;
        }
        if (said.start() - last.end() > OTHER_WORDS) {
            return false;
        }
        for (int at = last.end(); at < said.start(); at++) {
            if (!EQUATING.contains(heard.words.text(at))) {
                return false;
            }
        }
        return true;
    }

    /** "fifty grams is a whole cube, we take the half of it and that is twenty five": the rest is not used. */
    private boolean isShareOf(SpokenQuantity said, Quantity quantity, Mention last) {
        if (!heard.on(Mechanism.SHARES) || quantity.unit() != last.quantity().unit()) {
            return false;
        }
        return heard.quantitiesIn(last.end(), said.start()).stream()
                .filter(share -> share.manner() == Manner.SHARE)
                .anyMatch(share -> share.amount()
                        .least()
                        .map(factor -> last.quantity().amount().times(factor).least())
                        .equals(Optional.of(quantity.amount().least())));
    }

    /** "five or six tablespoons, let's say six": one of the range that was just told. */
    private boolean isNarrowed(SpokenQuantity said, Mention last) {
        Amount range = last.quantity().amount();
        boolean inside = !range.least().equals(range.most())
                && said.amount().least().equals(said.amount().most())
                && (range.least().equals(said.amount().least())
                        || range.most().equals(said.amount().least()));
        return inside && said.start() - last.end() <= NARROWED_REACH;
    }

    /** "one tablespoon, stir, and two, still too stiff, so three tablespoons": each counts those before it. */
    private static boolean isCountedUp(SpokenQuantity said, Quantity quantity, List<Mention> own) {
        if (own.size() < 2) {
            return false;
        }
        Mention second = own.get(own.size() - 1);
        Mention first = own.get(own.size() - 2);
        return said.start() - first.end() <= COUNT_REACH
                && isOneMore(second.quantity(), first.quantity())
                && isOneMore(quantity, second.quantity());
    }

    private static boolean isOneMore(Quantity more, Quantity one) {
        return more.unit() == one.unit()
                && one.amount()
                        .least()
                        .map(value -> value.add(Rationals.ONE))
                        .equals(more.amount().least());
    }

    /** "it's two, not one", "I don't know why I said thirty five, it's twenty five": what stood before is named and denied. */
    private boolean isTakenBack(SpokenQuantity said, List<Mention> own) {
        return heard.on(Mechanism.LATE_REPAIR)
                && heard.quantitiesIn(said.start() - CITED_REACH, said.end() + TAKEN_BACK_BEHIND).stream()
                        .filter(other -> isDeniedNear(said, other) || isCitation(other, own))
                        .filter(other ->
                                !other.amount().least().equals(said.amount().least()))
                        .anyMatch(other -> isOwn(other, own));
    }

    private static boolean isDeniedNear(SpokenQuantity said, SpokenQuantity other) {
        return other.isAside(Aside.Kind.DENIED) && said.start() - other.end() <= DENIED_REACH;
    }

    /** "… why I said thirty five": no new amount, if it was said before. */
    boolean isCitation(SpokenQuantity said, List<Mention> own) {
        return heard.phrases.endsBefore(Kind.CITES, said.start()) && isOwn(said, own);
    }

    private static boolean isOwn(SpokenQuantity said, List<Mention> own) {
        return own.stream()
                .anyMatch(mention -> mention.end() <= said.start()
                        && mention.quantity()
                                .amount()
                                .least()
                                .equals(said.amount().least()));
    }

    /** "that's one and a half all together". */
    boolean isTotal(int start, int end) {
        return heard.phrases.within(Kind.TOTAL_AFTER, end, end + 4)
                || heard.phrases.within(Kind.TOTAL_BEFORE, start - 4, start);
    }

    private boolean adds(int start, int end) {
        if (!heard.on(Mechanism.PARTS)) {
            return false;
        }
        OptionalInt before = heard.phrases.lastWithin(Kind.ADDS, start - 3, end);
        if (before.isPresent() && !heard.phrases.within(Kind.NO_REPAIR, before.getAsInt() - 1, before.getAsInt() + 1)) {
            return true;
        }
        if (heard.phrases.within(Kind.KEPT, end, end + KEPT_REACH)) {
            return true;
        }
        return heard.phrases.endAt(Kind.ADDS, end).isPresent()
                && !heard.words.text(end + 1).equals("for")
                && !heard.words.text(end + 1).equals("than")
                && !heard.words.text(end + 1).equals("or");
    }

    /** Whether the speaker takes back what stood before, somewhere in {@code [from, to)}. */
    boolean isRepaired(int from, int to) {
        if (!heard.on(Mechanism.REPAIR)) {
            return false;
        }
        for (int at = Math.max(0, from); at < to; at++) {
            OptionalInt end = heard.phrases.endAt(Kind.REPAIR, at);
            if (end.isPresent() && end.getAsInt() <= to && !isIdle(at, end.getAsInt(), to)) {
                return true;
            }
        }
        return false;
    }

    private boolean isIdle(int at, int end, int to) {
        if (heard.phrases.endAt(Kind.NO_REPAIR, at).isPresent()) {
            return true;
        }
        String word = heard.words.text(at);
        if (word.equals("should") && !thenAmount(end)) {
            return true;
        }
        boolean weak = end == at + 1 && WEAK.contains(word);
        if (!weak) {
            return false;
        }
        if (to - end > WEAK_REPAIR_REACH) {
            return true;
        }
        boolean no = word.equals("no") || word.equals("nope");
        return no && !thenAmount(end) && !heard.words.border(end) && !AFTER_NO.contains(heard.words.text(end));
    }

    private boolean thenAmount(int end) {
        return heard.quantityFrom(end).filter(next -> next.start() <= end + 1).isPresent();
    }

    /** "I said two teaspoons earlier, it's one": said of this amount or just before it. */
    private boolean isLate(int start, int end) {
        return heard.on(Mechanism.LATE_REPAIR)
                && (heard.phrases.within(Kind.LATE_REPAIR, start - LATE_REACH, start)
                        || heard.phrases.within(Kind.LATE_REPAIR, end, end + LATE_AHEAD));
    }

    /** "I told you five grams …, it's seven": however long the telling takes. */
    private boolean isCited(Mention last, int start) {
        return heard.on(Mechanism.LATE_REPAIR)
                && start - last.end() <= CITED_REACH
                && heard.phrases.within(Kind.LATE_REPAIR, last.start() - 6, last.start());
    }

    /** "a hundred and, a hundred and fifty grams": begun again, with the unit this time. */
    private boolean isRestart(SpokenQuantity said, Mention last) {
        return heard.on(Mechanism.RESTART) && said.manner() == Manner.MEASURED && isBegunAgain(said, last);
    }

    /** An amount without a unit and at once another, nothing named between them. */
    private boolean isBegunAgain(SpokenQuantity said, Mention last) {
        return last.assumedUnit()
                && !last.quantity().amount().equals(said.amount())
                && said.start() - last.end() <= RESTART_REACH
                && heard.namesIn(last.end(), said.start()).isEmpty();
    }

    /** "two twenty six, take a bit off, two twenty": what the scales say last is what goes in. */
    boolean isReadOff(SpokenQuantity said, Mention last) {
        boolean climbing = said.manner() == Manner.BARE && isBegunAgain(said, last);
        return heard.on(Mechanism.RESTART)
                && said.start() - last.end() <= SCALE_REACH
                && said.isAtLeast(SMALLEST_ON_SCALES)
                && (climbing || heard.phrases.within(Kind.ON_THE_SCALES, last.end(), said.start()));
    }
}
