package org.misecue.edit;

import java.time.Duration;

/**
 * A word of a caption, or several that stand for one amount.
 *
 * @param text as it is shown
 * @param start when it begins
 * @param end when the next one begins, or the cue ends
 */
record Said(String text, Duration start, Duration end) {

    boolean endsSentence() {
        return text.matches(".*[.!?…][\"”’')]*");
    }

    boolean endsClause() {
        return text.matches(".*[,;:–—][\"”’')]*");
    }
}
