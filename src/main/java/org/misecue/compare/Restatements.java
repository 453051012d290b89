package org.misecue.compare;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;

/** One amount told twice: in another measure, as a share worked out, or more exactly. */
final class Restatements {

    private static final int POINTED_REACH = 14;
    private static final int OTHER_WORDS = 6;
    private static final int NARROWED_REACH = 10;
    private static final Set<String> POINTERS = Set.of("that", "which");
    private static final Set<String> EQUATING = Words.set(
            "which is that so call about or roughly equals comes to works out at it about a be in around and");

    static final Set<Unit> SPOONS = EnumSet.of(Unit.TEASPOON, Unit.TABLESPOON);

    private final Hearing heard;

    Restatements(Hearing heard) {
        this.heard = heard;
    }

    /** "a heaped tablespoon, which is twenty five grams": one amount in two measures. */
    boolean isInOtherWords(Further amount) {
        if (amount.quantity().unit() == amount.last().quantity().unit() || !heard.on(Mechanism.OTHER_WORDS)) {
            return false;
        }
        if (isOtherSpoon(amount.quantity(), amount.last().quantity())) {
            return false;
        }
        return isPointedAt(amount) || (amount.distance() <= OTHER_WORDS && isEquated(amount));
    }

    /** "that said a tablespoon, it's a teaspoon": as many of another spoon are another amount. */
    private static boolean isOtherSpoon(Quantity one, Quantity other) {
        return SPOONS.contains(one.unit())
                && SPOONS.contains(other.unit())
                && one.amount().equals(other.amount());
    }

    private boolean isPointedAt(Further amount) {
        return heard.words.text(amount.start() - 1).equals("is")
                && POINTERS.contains(heard.words.text(amount.start() - 2))
                && amount.distance() <= POINTED_REACH
                && heard.namesIn(amount.last().end(), amount.start()).isEmpty();
    }

    private boolean isEquated(Further amount) {
        for (int at = afterThing(amount.last()); at < amount.start(); at++) {
            if (!EQUATING.contains(heard.words.text(at))) {
                return false;
            }
        }
        return true;
    }

    /** "six tablespoons of sugar, or ninety grams": behind the name of what is measured. */
    private int afterThing(Mention last) {
        int at = heard.words.text(last.end()).equals("of") ? last.end() + 1 : last.end();
        return heard.namesIn(at, at + 1).stream()
                .filter(name -> name.lines().contains(last.line()))
                .mapToInt(NameHit::end)
                .findFirst()
                .orElse(last.end());
    }

    /** "fifty grams is a whole cube, we take the half of it and that is twenty five": the rest is not used. */
    boolean isShare(Further amount) {
        Quantity whole = amount.last().quantity();
        return heard.on(Mechanism.SHARES)
                && amount.quantity().unit() == whole.unit()
                && heard.quantitiesIn(amount.last().end(), amount.start()).stream()
                        .filter(share -> share.manner() == Manner.SHARE)
                        .anyMatch(share -> isShare(share, whole, amount.quantity()));
    }

    private static boolean isShare(SpokenQuantity share, Quantity whole, Quantity part) {
        return share.amount()
                .least()
                .map(factor -> whole.amount().times(factor).least())
                .equals(Optional.of(part.amount().least()));
    }

    /** "five or six tablespoons, let's say six": one of the range that was just told. */
    boolean narrows(Further amount) {
        Amount range = amount.last().quantity().amount();
        Amount said = amount.said().amount();
        boolean inside = !range.least().equals(range.most())
                && said.least().equals(said.most())
                && (range.least().equals(said.least()) || range.most().equals(said.least()));
        return inside && amount.distance() <= NARROWED_REACH && heard.on(Mechanism.NARROWED_RANGES);
    }
}
