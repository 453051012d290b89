package org.misecue.worktop;

import java.util.Optional;
import org.misecue.footage.Beside;

/** What an editor should know of how a film was laid beside another, or why it was not. */
public final class Doubts {

    private Doubts() {}

    /** Of a film that is laid beside another all the same. */
    public static Optional<String> of(Beside beside, String other) {
        if (beside.denied().isPresent()) {
            return Optional.of(
                    "this is laid beside %s by what both heard, which denies their time codes".formatted(other));
        }
        return beside.isByTimecodeAlone()
                ? Optional.of("this is laid beside %s by time code alone: their sound cannot tell".formatted(other))
                : Optional.empty();
    }

    /** Of a film that is not. */
    public static String unlaid(Beside beside, String other) {
        return beside.denied().isPresent()
                ? "by time code this ran beside %s, but the two sound different, so they are not laid together"
                        .formatted(other)
                : "it is not known when this ran beside %s: neither time code nor sound tells".formatted(other);
    }
}
