package org.misecue.spoken;

import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** Whether an amount is only a part of what goes in: so much at a time, on each piece, or left over. */
final class Portions {

    private static final Set<String> LEAVING = Set.of("leave", "leaves", "leaving");
    private static final Set<String> ON_EACH = Set.of("on", "in", "into", "for");
    private static final Set<String> EVERY = Set.of("on", "in", "into", "for", "to");
    /** So many eggs at a time are put in by hand; forty are another kitchen's. */
    private static final RationalNumber FEW = Rationals.of(4);

    private static final Set<String> MORE = Set.of("another", "extra", "plus", "more");
    private static final Set<String> TIMES = Words.set("time day week year month christmas single other one");
    private static final Set<String> BAKED = Words.set("biscuit cookie muffin square slice scone cupcake roll");
    private static final Set<String> PER = Set.of("per", "a");
    private static final Set<String> PIECES = Words.set(
            "egg white person head loaf tart tin tins tray trays layer layers bun buns ball balls piece pieces cake "
                    + "cakes side half portion");

    private final WordStream words;
    private final Phrases phrases;
    private final Places<NameHit> names;

    Portions(WordStream words, Phrases phrases, Places<NameHit> names) {
        this.words = words;
        this.phrases = phrases;
        this.names = names;
    }

    /** "which leaves fifty grams". */
    boolean isLeft(SpokenQuantity said) {
        boolean time = said.unit()
                .filter(unit -> unit.dimension() == Dimension.DURATION)
                .isPresent();
        return LEAVING.contains(words.text(said.start() - 1)) && said.manner() != Manner.HEAT && !time;
    }

    /** "and another two tablespoons for the board": more that does not go in. */
    boolean isForTheBoard(SpokenQuantity said) {
        return phrases.endAt(Kind.FOR_THE_BOARD, afterThing(said.end())).isPresent()
                && (MORE.contains(words.text(said.start())) || MORE.contains(words.text(said.start() - 1)));
    }

    /** "a spoon at a time", "two hundred on each layer", "two eighty a tin". */
    boolean isPortion(SpokenQuantity said) {
        int at = phrases.endAt(Kind.HEDGE_AFTER, said.end()).orElse(said.end());
        String next = words.text(at);
        String second = words.text(at + 1);
        return isAtATime(at)
                || (PER.contains(next) && PIECES.contains(second) && !words.wall(at))
                || (ON_EACH.contains(next) && second.equals("each") && !isEachOfUs(at + 2))
                || isPerPiece(at)
                || isPerPiece(afterThing(at))
                || (isAtATime(afterThing(at)) && said.isBelow(FEW))
                || (next.equals("apiece") && !second.equals("of"));
    }

    /** "a hundred and twenty for each of us": one's own share. */
    private boolean isEachOfUs(int at) {
        return words.normal(at, at + 2).equals("of us");
    }

    private boolean isAtATime(int at) {
        return words.text(at).equals("at")
                && words.text(at + 1).equals("a")
                && words.text(at + 2).equals("time");
    }

    /** Behind what is measured: "a slice of bacon | for every muffin". */
    private int afterThing(int at) {
        int end = at;
        for (int names = 0; names < 2; names++) {
            int from = words.text(end).equals("of") ? end + 1 : end;
            end = this.names.at(from).map(NameHit::end).orElse(end);
        }
        return end;
    }

    /** "for every muffin", "on every biscuit", "per square". */
    private boolean isPerPiece(int at) {
        boolean every = EVERY.contains(words.text(at))
                && words.text(at + 1).equals("every")
                && !TIMES.contains(words.text(at + 2));
        return words.on(Mechanism.FOR_EVERY)
                && (every || (words.text(at).equals("per") && isPiece(words.text(at + 1))));
    }

    private static boolean isPiece(String word) {
        return PIECES.contains(word) || BAKED.contains(word);
    }
}
