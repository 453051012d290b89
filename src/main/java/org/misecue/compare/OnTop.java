package org.misecue.compare;

import java.util.Optional;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import tech.units.indriya.function.RationalNumber;

/** "Butter on top of the chocolate until the scales say three hundred and eighty": what goes in is the difference. */
final class OnTop {

    private static final int READS_REACH = 4;
    private static final int REACH = 30;

    private OnTop() {}

    /** What was added; empty where the scales show one thing alone. */
    static Optional<SpokenQuantity> added(SpokenQuantity said, Mentions mentions, Hearing heard) {
        boolean reads = heard.on(Mechanism.SCALES)
                && heard.phrases.within(Kind.SCALES_READ, said.start() - READS_REACH, said.start());
        if (!reads) {
            return Optional.empty();
        }
        return mentions.last()
                .filter(below -> said.start() - below.end() <= REACH)
                .filter(below -> below.quantity().unit() == said.unit().orElse(Unit.GRAM))
                .filter(below -> heard.words.normal(below.end(), said.start()).contains("on top"))
                .flatMap(below -> mentions.committed(below.line()))
                .flatMap(below -> more(said, below))
                .map(more ->
                        new SpokenQuantity(said.start(), said.end(), more, said.unit(), said.manner(), said.aside()));
    }

    private static Optional<Amount> more(SpokenQuantity said, Quantity below) {
        Optional<RationalNumber> all = said.amount().least();
        return below.amount().least().flatMap(first -> all.filter(both -> both.compareTo(first) > 0)
                .map(both -> Amount.of(both.subtract(first))));
    }
}
