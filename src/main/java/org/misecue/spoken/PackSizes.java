package org.misecue.spoken;

import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity.Manner;

/** Whether an amount is the size of what food is sold in. */
final class PackSizes {

    private static final Set<String> SAYS = Set.of("says", "say", "is", "holds", "are", "said");
    private static final Set<String> EACH = Set.of("a", "each", "every", "the", "one");
    private static final int READ_REACH = 5;

    private final WordStream words;
    private final Phrases phrases;

    PackSizes(WordStream words, Phrases phrases) {
        this.words = words;
        this.phrases = phrases;
    }

    /** "a four hundred gram tin". */
    boolean isBeforePack(SpokenQuantity said) {
        return (weighs(said) || isBareSize(said)) && QuantityWords.isPacking(words, said.end());
    }

    /** "three hundred and seventy is the jar". */
    boolean isThePack(SpokenQuantity said) {
        String next = words.text(said.end());
        return (next.equals("is") || next.equals("was"))
                && words.text(said.end() + 1).equals("the")
                && QuantityWords.isPacking(words.text(said.end() + 2));
    }

    /** Told of a pack that is named around it. */
    boolean isToldOfPack(SpokenQuantity said) {
        return isPackOf(said) || isInPack(said) || isReadOffPack(said);
    }

    /** "a tub of two hundred", "a bag of ten limes". */
    private boolean isPackOf(SpokenQuantity said) {
        return words.text(said.start() - 1).equals("of")
                && QuantityWords.isPacking(words.text(said.start() - 2))
                && said.manner() != Manner.PACKED;
    }

    /** "ten grams in a packet". */
    private boolean isInPack(SpokenQuantity said) {
        return (weighs(said) || isBareSize(said))
                && words.text(said.end()).equals("in")
                && EACH.contains(words.text(said.end() + 1))
                && QuantityWords.isPacking(words.text(said.end() + 2));
    }

    /** "this carton says three hundred", "the bottle's seven hundred grams", "the tin I get is …". */
    private boolean isReadOffPack(SpokenQuantity said) {
        if (said.manner() != Manner.BARE && !weighs(said)) {
            return false;
        }
        String before = words.text(said.start() - 1);
        boolean total = before.equals("is") && words.text(said.start() - 2).equals("that");
        if (!SAYS.contains(before) || total) {
            return false;
        }
        for (int at = said.start() - 2; at >= said.start() - READ_REACH; at--) {
            if (words.text(at).equals("so")) {
                return false;
            }
            if (QuantityWords.isPacking(words, at) && !isOnTheHob(at)) {
                return !phrases.within(Kind.VIEWER, at, said.start());
            }
        }
        return false;
    }

    /** "in the pot it's two hundred": what is boiled in it. */
    private boolean isOnTheHob(int at) {
        boolean in = words.text(at - 1).equals("in") || (words.text(at - 2).equals("in") && !isEach(at - 1));
        return words.text(at).equals("pot") && in;
    }

    private boolean isEach(int at) {
        return EACH.contains(words.text(at)) && !words.text(at).equals("the");
    }

    /** "a three thirty carton", "three hundred in the jar": nobody counts so many packs. */
    private boolean isBareSize(SpokenQuantity said) {
        return said.manner() == Manner.BARE && said.isAtLeast(LooseUnits.MANY_PACKS) && words.on(Mechanism.TAKEN_FROM);
    }

    private static boolean weighs(SpokenQuantity said) {
        return said.unit()
                .map(Unit::dimension)
                .filter(dimension -> dimension == Dimension.MASS || dimension == Dimension.VOLUME)
                .isPresent();
    }
}
