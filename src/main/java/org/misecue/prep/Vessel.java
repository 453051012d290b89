package org.misecue.prep;

import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** What an ingredient stands ready in. Sizes leave room to stir and pour; they are common practice, no source. */
public enum Vessel {
    PINCH_BOWL("pinch bowl"),
    SMALL_BOWL("small bowl"),
    LARGE_BOWL("large bowl"),
    SMALL_JUG("small jug"),
    LARGE_JUG("large jug");

    private static final RationalNumber PINCH_ML = Rationals.of(30);
    private static final RationalNumber SMALL_ML = Rationals.of(250);

    private final String words;

    Vessel(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** @param millilitres the volume of the contents, an estimate */
    static Vessel holding(RationalNumber millilitres, boolean liquid) {
        if (millilitres.compareTo(PINCH_ML) <= 0) {
            return PINCH_BOWL;
        }
        if (millilitres.compareTo(SMALL_ML) <= 0) {
            return liquid ? SMALL_JUG : SMALL_BOWL;
        }
        return liquid ? LARGE_JUG : LARGE_BOWL;
    }
}
