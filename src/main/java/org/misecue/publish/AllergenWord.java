package org.misecue.publish;

import java.util.Optional;
import org.misecue.pantry.Allergen;

/**
 * One row of {@code allergen-words.csv}.
 *
 * @param words in lower case
 * @param from where the part to emphasise begins in the words
 * @param to where it ends, not included
 * @param substance empty for words that only look like an allergen
 * @param called the substance in the "Contains" line: "wheat"
 * @param how what to make of it
 */
record AllergenWord(String words, int from, int to, Optional<Allergen> substance, String called, How how) {

    enum How {
        /** The word names the substance: "EGGS". */
        CLEAR,
        /** The name follows: "FLOUR (WHEAT)". */
        SAYS,
        /** Some makes contain it: nothing is emphasised, the label is to be read. */
        CHECK
    }
}
