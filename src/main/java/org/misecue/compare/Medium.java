package org.misecue.compare;

import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/** How the words of a stream come to the viewer: heard, or read in the picture. The rules are the same for both. */
interface Medium {

    /** How a reason begins: "Said", "Shown". */
    String told();

    /** The moment of the words of {@code [start, end)}. */
    Evidence evidence(WordStream words, int start, int end, Optional<Quantity> quantity);

    /** Whether an amount and a name at these words can belong together. */
    boolean together(Token one, Token other);

    /** The step that is on at the word, where the medium itself knows better than its words; 0 for none. */
    OptionalInt stepAt(Token word);

    /** Words that run on: a listener joins what a recogniser's cues cut. */
    Medium SPEECH = new Medium() {
        @Override
        public String told() {
            return "Said";
        }

        @Override
        public Evidence evidence(WordStream words, int start, int end, Optional<Quantity> quantity) {
            return new Evidence(
                    Evidence.Via.SPOKEN,
                    words.moment(start),
                    quantity,
                    words.quote(start, end),
                    words.words(start, end));
        }

        @Override
        public boolean together(Token one, Token other) {
            return one.source().equals(other.source());
        }

        @Override
        public OptionalInt stepAt(Token word) {
            return OptionalInt.empty();
        }
    };
}
