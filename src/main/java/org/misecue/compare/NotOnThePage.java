package org.misecue.compare;

import java.util.Comparator;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/**
 * "… a bit of salt, and this isn't on the page but there's mixed spice in it, half a teaspoon": what is told to be written
 * nowhere has the amounts that are said with it, not the ingredient before.
 */
final class NotOnThePage {

    private static final int REACH = 24;
    private static final int UNKNOWN_REACH = 14;

    private final Hearing heard;

    NotOnThePage(Hearing heard) {
        this.heard = heard;
    }

    /**
     * Before which word the recipe's names were left for something that is told to be written nowhere; 0 where none were.
     */
    int leftBefore(SpokenQuantity said) {
        int told = heard.phrases
                .lastWithin(Kind.NOT_WRITTEN, said.start() - REACH, said.start())
                .orElse(0);
        boolean foreign = told > 0
                && heard.namesIn(told, said.start()).stream()
                        .filter(name -> !heard.isPassing(name))
                        .max(Comparator.comparingInt(NameHit::start))
                        .filter(name -> !name.inRecipe())
                        .isPresent();
        return foreign ? told : 0;
    }

    /** Whether the amount is of something that nobody knows and that is told to be written nowhere. */
    boolean isOfUnknown(SpokenQuantity said) {
        return UnknownName.behind(said, heard).isPresent()
                && heard.namesIn(said.end(), said.end() + UnknownName.LONGEST).isEmpty()
                && heard.phrases.within(Kind.NOT_WRITTEN, said.start() - UNKNOWN_REACH, said.end() + UNKNOWN_REACH);
    }
}
