package org.misecue.compare;

import java.util.Comparator;
import java.util.OptionalInt;
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

    /** Whether the name was left for something that is told to be written nowhere. */
    boolean isLeft(NameHit name, SpokenQuantity said) {
        OptionalInt told = heard.phrases.lastWithin(Kind.NOT_WRITTEN, said.start() - REACH, said.start());
        return told.isPresent()
                && name.inRecipe()
                && name.start() < told.getAsInt()
                && heard.namesIn(told.getAsInt(), said.start()).stream()
                        .filter(other -> !heard.isPassing(other))
                        .max(Comparator.comparingInt(NameHit::start))
                        .filter(other -> !other.inRecipe())
                        .isPresent();
    }

    /** Whether the amount is of something that nobody knows and that is told to be written nowhere. */
    boolean isOfUnknown(SpokenQuantity said) {
        return saysUnwritten(said)
                && UnknownName.behind(said, heard).isPresent()
                && heard.namesIn(said.end(), said.end() + UnknownName.LONGEST).isEmpty();
    }

    private boolean saysUnwritten(SpokenQuantity said) {
        return heard.phrases.within(Kind.NOT_WRITTEN, said.start() - UNKNOWN_REACH, said.end() + UNKNOWN_REACH);
    }
}
