package org.misecue.compare;

import java.util.Optional;
import org.misecue.narration.Moment;
import org.misecue.quantity.Quantity;

/**
 * One moment that bears on a verdict.
 *
 * @param via how it came to the viewer
 * @param moment where the deciding words begin
 * @param quantity what was said, where a quantity was
 * @param quote the words around it, as the recogniser wrote them
 * @param deciding the deciding words within the quote, for marking; empty where there is nothing to mark
 * @param doubtful whether the words themselves may be misread, so that nothing can rest on them alone
 */
public record Evidence(
        Via via, Moment moment, Optional<Quantity> quantity, String quote, String deciding, boolean doubtful) {

    /** Words that were understood. */
    public Evidence(Via via, Moment moment, Optional<Quantity> quantity, String quote, String deciding) {
        this(via, moment, quantity, quote, deciding, false);
    }

    /** The quote up to what is to be marked; all of it where nothing is. */
    public String before() {
        return marked().isEmpty() ? quote : quote.substring(0, quote.indexOf(deciding));
    }

    /** What is to be marked: the deciding words, where they stand in the quote. */
    public String marked() {
        return quote.contains(deciding) ? deciding : "";
    }

    /** The quote behind it. */
    public String after() {
        return marked().isEmpty() ? "" : quote.substring(quote.indexOf(deciding) + deciding.length());
    }

    /** Heard or seen. */
    public enum Via {
        SPOKEN("spoken"),
        SHOWN("shown");

        private final String code;

        Via(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }
}
