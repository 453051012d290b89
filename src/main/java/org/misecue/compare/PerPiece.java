package org.misecue.compare;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;

/** "Thirty grams on every tin and there's four of them": what each piece gets, so many times as there are pieces. */
final class PerPiece {

    private static final int REACH_ON = 9;
    private static final int REACH_BACK = 14;
    private static final Set<String> EACH = Set.of("every", "each", "a", "per");
    private static final Set<String> USES = Words.set("using use take taking want need are is got have");

    private final Hearing heard;

    PerPiece(Hearing heard) {
        this.heard = heard;
    }

    /** What all the pieces get; empty where their number is not told. */
    Optional<SpokenQuantity> all(SpokenQuantity said) {
        boolean apiece = heard.words.text(said.end()).equals("apiece");
        boolean portion = (said.isAside(Aside.Kind.PORTION) || (apiece && said.isAside(Aside.Kind.PACK_SIZE)))
                && said.manner() == Manner.MEASURED
                && heard.on(Mechanism.PRODUCTS);
        return portion
                ? counts(said, behindEach(said.end()))
                        .filter(count -> count.isAtLeast(Rationals.of(2)))
                        .findFirst()
                        .flatMap(count -> count.amount().least())
                        .map(count -> new SpokenQuantity(
                                said.start(),
                                said.end(),
                                said.amount().times(count),
                                said.unit(),
                                said.manner(),
                                Optional.empty()))
                : Optional.empty();
    }

    /** Where the piece is named: behind "on every", "in each", "a", "per"; the amount's own end for "apiece". */
    private int behindEach(int end) {
        for (int at = end; at < end + 2; at++) {
            if (EACH.contains(heard.words.text(at))) {
                return at + 1;
            }
        }
        return end;
    }

    private Stream<SpokenQuantity> counts(SpokenQuantity said, int piece) {
        Stream<SpokenQuantity> among = heard.quantitiesIn(piece, piece + 3).stream()
                .filter(count -> heard.words.text(piece).equals("of")
                        && PointerGrammar.DETERMINERS.contains(heard.words.text(piece + 1))
                        && count.start() == piece + 2);
        Stream<SpokenQuantity> behind = heard.quantitiesIn(said.end(), said.end() + REACH_ON).stream()
                .filter(count -> heard.isOfThem(count.end()) || isUsed(count, said) || countsPieces(count, piece));
        Stream<SpokenQuantity> before = heard.quantitiesIn(said.start() - REACH_BACK, said.start()).stream()
                .filter(count -> countsPieces(count, piece));
        return Stream.of(among, behind, before).flatMap(each -> each);
    }

    /** "four ounces apiece and I'm using two". */
    private boolean isUsed(SpokenQuantity count, SpokenQuantity said) {
        return heard.words.text(said.end()).equals("apiece") && USES.contains(heard.words.text(count.start() - 1));
    }

    private boolean countsPieces(SpokenQuantity count, int piece) {
        int counted = count.manner() == Manner.PACKED ? count.end() - 1 : count.end();
        return Words.singular(heard.words.text(counted)).equals(Words.singular(heard.words.text(piece)));
    }
}
