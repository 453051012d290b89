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

    /** The quote up to the deciding words; all of it where nothing is to be marked. */
    public String before() {
        int at = deciding.isEmpty() ? -1 : quote.indexOf(deciding);
        return at < 0 ? quote : quote.substring(0, at);
    }

    /** The quote behind the deciding words. */
    public String after() {
        int at = deciding.isEmpty() ? -1 : quote.indexOf(deciding);
        return at < 0 ? "" : quote.substring(at + deciding.length());
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
