package org.misecue.shown;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A word as the recogniser gives it.
 *
 * @param sure from 0 to 100
 */
record Word(Box box, List<Sign> signs, int sure) {

    /** One sign of it. */
    record Sign(Box box, String text, int sure) {}

    String text() {
        return signs.stream().map(Sign::text).collect(Collectors.joining());
    }
}
