package org.misecue.spoken;

import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Whether an amount is only a part of what goes in: so much at a time, on each piece, or left over. */
final class Portions {

    private static final Set<String> LEAVING = Set.of("leave", "leaves", "leaving");
    private static final Set<String> ON_EACH = Set.of("on", "in", "into", "for");
    private static final Set<String> PER = Set.of("per", "a");
    private static final Set<String> PIECES = Words.set(
            "egg white person head loaf tart tin tins tray trays layer layers bun buns ball balls piece pieces cake "
                    + "cakes side half portion");

    private final WordStream words;
    private final Phrases phrases;

    Portions(WordStream words, Phrases phrases) {
        this.words = words;
        this.phrases = phrases;
    }

    /** "which leaves fifty grams". */
    boolean isLeft(SpokenQuantity said) {
        boolean time = said.unit()
                .filter(unit -> unit.dimension() == Dimension.DURATION)
                .isPresent();
        return LEAVING.contains(words.text(said.start() - 1)) && said.manner() != Manner.HEAT && !time;
    }

    /** "a spoon at a time", "two hundred on each layer", "two eighty a tin". */
    boolean isPortion(SpokenQuantity said) {
        int at = phrases.endAt(Kind.HEDGE_AFTER, said.end()).orElse(said.end());
        String next = words.text(at);
        String second = words.text(at + 1);
        boolean atATime =
                next.equals("at") && second.equals("a") && words.text(at + 2).equals("time");
        return atATime
                || (PER.contains(next) && PIECES.contains(second))
                || (ON_EACH.contains(next) && second.equals("each"))
                || (next.equals("apiece") && !second.equals("of"));
    }
}
