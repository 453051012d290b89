package org.misecue.shots;

import java.util.Locale;

/** Which ingredients go in during an action, told by where the method names them. */
enum Adds {
    /** None: ovens are heated and tins lined without. */
    NOTHING,
    /** Those named after its words in the sentence: "scatter with the hazelnuts". */
    AFTER,
    /** Also those named before it that nothing else takes: "put the butter in a bowl and beat". */
    AROUND;

    String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
