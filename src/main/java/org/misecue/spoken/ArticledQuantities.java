package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.spoken.SpokenQuantity.Manner;

/** One of a unit, told by an article: "a teaspoon", "another cup", "an hour and a half", "a pinch", "the whole tin". */
final class ArticledQuantities {

    private static final Set<String> BEFORE_OTHER = Set.of("the", "that", "this");
    private static final Set<String> BEHIND_THE = Set.of("whole", "other");
    private static final Set<String> OWNERS = Set.of("the", "your", "my");
    private static final Set<String> LARGE_UNITS = Set.of("kilo", "litre", "liter", "pound", "pint");
    private static final Set<String> CONTAINED = Set.of("in", "into", "from");

    /** "a tablespoon and then another, so that's two". */
    private static final Set<String> AFTER_ANOTHER = Set.of("and", "so", "then", "that", "now");

    /** "one after another". */
    private static final Set<String> IN_TURN = Set.of("after", "one");

    private final WordStream words;
    private final BetweenWords between;
    private final UnitTails tails;
    private final LooseUnits loose;

    ArticledQuantities(WordStream words, BetweenWords between, UnitTails tails, LooseUnits loose) {
        this.words = words;
        this.between = between;
        this.tails = tails;
        this.loose = loose;
    }

    Optional<SpokenQuantity> at(int start) {
        int at = between.afterSizes(start + 1);
        if (!isArticle(start) || isContained(start, at)) {
            return Optional.empty();
        }
        if (isAnotherAlone(start)) {
            return Optional.of(SpokenQuantity.of(start, start + 1, Amount.of(1), Manner.BARE));
        }
        if (isOneMore(start, at)) {
            return Optional.of(SpokenQuantity.of(start, at + 1, Amount.of(1), Manner.BARE));
        }
        return UnitWords.at(words, at)
                .map(unit -> tails.with(start, Amount.of(1), unit))
                .or(() -> loose.at(start, at, Amount.of(1)));
    }

    private boolean isArticle(int start) {
        return BetweenWords.isArticle(words.text(start))
                || isTheKilo(start)
                || (BEFORE_OTHER.contains(words.text(start)) && BEHIND_THE.contains(words.text(start + 1)));
    }

    /** "so that's the kilo": one of a large unit, told as what something comes to. */
    private boolean isTheKilo(int start) {
        return OWNERS.contains(words.text(start))
                && LARGE_UNITS.contains(words.text(start + 1))
                && words.text(start - 1).equals("is")
                && words.text(start - 2).equals("that");
    }

    /** "in a cup", "from a jar": where something is, not how much of it; "stir in a cup of milk" is an amount. */
    private boolean isContained(int start, int at) {
        boolean vessel = words.text(at).equals("cup") || QuantityWords.isPacking(words.text(at));
        return vessel
                && CONTAINED.contains(words.text(start - 1))
                && !words.text(at + 1).equals("of");
    }

    private boolean isAnotherAlone(int start) {
        return words.text(start).equals("another")
                && !IN_TURN.contains(words.text(start - 1))
                && (words.wall(start + 1) || AFTER_ANOTHER.contains(words.text(start + 1)));
    }

    /** "another one", "a whole one": one more of what was measured before, or one of it instead. */
    private boolean isOneMore(int start, int at) {
        boolean more = words.text(start).equals("another")
                || (words.text(at - 1).equals("whole") && !words.text(start).equals("the"));
        return more && words.text(at).equals("one") && !words.text(at + 1).equals("of");
    }
}
