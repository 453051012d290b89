package org.misecue.compare;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** Amounts said by pointing at another: "the same again of sugar", "half that of cream", "twice as much". */
final class BackReferences {

    private static final Map<String, RationalNumber> PHRASES = Map.ofEntries(
            Map.entry("the same again", Rationals.ONE),
            Map.entry("same again", Rationals.ONE),
            Map.entry("the same amount", Rationals.ONE),
            Map.entry("same amount", Rationals.ONE),
            Map.entry("the same weight", Rationals.ONE),
            Map.entry("same weight", Rationals.ONE),
            Map.entry("an equal amount", Rationals.ONE),
            Map.entry("equal amount", Rationals.ONE),
            Map.entry("the same of", Rationals.ONE),
            Map.entry("same quantity", Rationals.ONE),
            Map.entry("twice that", Rationals.of(2)),
            Map.entry("double that", Rationals.of(2)),
            Map.entry("twice as much", Rationals.of(2)),
            Map.entry("double the amount", Rationals.of(2)),
            Map.entry("twice the amount", Rationals.of(2)),
            Map.entry("three times that", Rationals.of(3)),
            Map.entry("half that", Rationals.of(1, 2)),
            Map.entry("half of that", Rationals.of(1, 2)),
            Map.entry("half as much", Rationals.of(1, 2)),
            Map.entry("half the amount", Rationals.of(1, 2)));

    private static final int LONGEST = 3;

    /** A reference heard in {@code [start, end)}, and how many times the other amount it is. */
    record Reference(int start, int end, RationalNumber factor) {}

    private BackReferences() {}

    static Optional<Reference> at(int start, Hearing heard) {
        for (int length = LONGEST; length >= 2; length--) {
            RationalNumber factor = PHRASES.get(heard.words.normal(start, start + length));
            if (factor != null && start + length <= heard.words.size()) {
                return Optional.of(new Reference(start, start + length, factor));
            }
        }
        return Optional.empty();
    }

    /** The reference as an amount, taken from the mention that it points at. */
    static Optional<SpokenQuantity> resolve(Reference reference, List<Mention> before, Hearing heard) {
        return pointedAt(reference, before, heard).map(mention -> {
            Amount amount = mention.quantity().amount().times(reference.factor());
            return new SpokenQuantity(
                    reference.start(),
                    reference.end(),
                    amount,
                    Optional.of(mention.quantity().unit()),
                    Manner.MEASURED,
                    "");
        });
    }

    /** What follows "as", if an ingredient does; otherwise what was measured last. */
    private static Optional<Mention> pointedAt(Reference reference, List<Mention> before, Hearing heard) {
        for (NameHit name : heard.names) {
            boolean named = name.start() >= reference.end()
                    && name.start() <= reference.end() + 6
                    && heard.words.normal(name.start() - 2, name.start()).contains("as");
            if (named) {
                Optional<Mention> said = before.stream()
                        .filter(mention -> name.lines().contains(mention.line()))
                        .reduce((first, second) -> second);
                if (said.isPresent()) {
                    return said;
                }
            }
        }
        return before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
    }
}
