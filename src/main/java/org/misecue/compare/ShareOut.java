package org.misecue.compare;

import java.util.Optional;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/**
 * "Four eggs, two in the first bowl and two in the second", "we need two eggs, one for you and one for me": bare numbers
 * that come to what was just said tell who gets which of it, and are no more of it.
 */
final class ShareOut {

    private static final int WHOLE_REACH = 20;
    private static final int PART_REACH = 8;

    private final Hearing heard;

    ShareOut(Hearing heard) {
        this.heard = heard;
    }

    boolean isPart(Further amount) {
        Optional<Mention> whole = amount.own().stream()
                .filter(mention -> mention.role() != Role.RESTATES)
                .reduce((first, second) -> second)
                .filter(mention ->
                        mention.quantity().unit() == Unit.EACH && amount.start() - mention.end() <= WHOLE_REACH);
        return heard.on(Mechanism.SHARED_OUT) && whole.isPresent() && isPart(amount.said(), whole.get());
    }

    private boolean isPart(SpokenQuantity said, Mention whole) {
        Amount all = whole.quantity().amount();
        boolean first = heard.quantityFrom(said.end())
                .filter(next -> next.start() - said.end() <= PART_REACH)
                .filter(next -> makeUp(all, said, next))
                .isPresent();
        boolean second = heard.quantityBefore(said.start())
                .filter(before -> before.start() >= whole.end() && said.start() - before.end() <= PART_REACH)
                .filter(before -> makeUp(all, before, said))
                .isPresent();
        return first || second;
    }

    private static boolean makeUp(Amount all, SpokenQuantity one, SpokenQuantity other) {
        return one.manner() == Manner.BARE
                && other.manner() == Manner.BARE
                && one.amount()
                        .least()
                        .flatMap(part -> other.amount().least().map(part::add))
                        .equals(all.least());
    }
}
