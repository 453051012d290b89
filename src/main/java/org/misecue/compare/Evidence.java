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
 */
public record Evidence(Via via, Moment moment, Optional<Quantity> quantity, String quote, String deciding) {

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
