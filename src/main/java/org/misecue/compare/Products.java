package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.QuantityWords;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/** "Two tubs, they're two fifty each, so that's half a kilo": so many of one size, told with what they come to. */
final class Products {

    private static final int COUNT_REACH = 14;
    private static final int REACH = 12;
    private static final Set<String> EACH = Set.of("each", "apiece", "every");

    private final Hearing heard;

    Products(Hearing heard) {
        this.heard = heard;
    }

    /** Whether the amount is what so many of the size just told come to. */
    boolean isOne(SpokenQuantity said, Mention size) {
        return heard.on(Mechanism.PRODUCTS)
                && said.start() >= size.end()
                && said.start() - size.end() <= REACH
                && isEach(size)
                && count(size)
                        .flatMap(count -> count.amount().least())
                        .map(count -> size.quantity().times(count))
                        .filter(product -> isSame(product, said))
                        .isPresent();
    }

    private boolean isEach(Mention size) {
        boolean each = EACH.contains(heard.words.text(size.end()))
                || heard.words.text(size.end()).equals("a");
        return each || heard.phrases.within(Kind.TOTAL_AFTER, size.end(), size.end() + REACH);
    }

    /** The packs or pieces that were counted before their size. */
    private Optional<SpokenQuantity> count(Mention size) {
        return heard.quantityBefore(size.start())
                .filter(count -> size.start() - count.end() <= COUNT_REACH)
                .filter(count -> count.manner() == Manner.PACKED
                        || (count.manner() == Manner.BARE
                                && (count.isAside() || QuantityWords.isPacking(heard.words, count.end()))));
    }

    private boolean isSame(Quantity product, SpokenQuantity said) {
        Quantity told = said.quantity().orElseGet(() -> new Quantity(said.amount(), product.unit()));
        return product.dimension() == told.dimension()
                && product.leastInBase(heard.household).equals(told.leastInBase(heard.household));
    }
}
