package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** Times that are not how long something takes: "every ten minutes", "an hour ago", "have a peek at twenty", "turn the tray after ten". */
final class PassingTime {

    private static final int LOOK_REACH = 5;
    private static final int OFFER_REACH = 6;
    private static final Set<String> WHEN = Set.of("at", "after", "from", "by", "around", "about");

    private PassingTime() {}

    static boolean is(SpokenQuantity said, Hearing heard) {
        return heard.phrases.endsBefore(Kind.PASSING_TIME_BEFORE, said.start())
                || heard.phrases.endAt(Kind.PASSING_TIME_AFTER, said.end()).isPresent()
                || isOffered(said, heard)
                || isLook(said, heard)
                || isIfNeeded(said, heard);
    }

    /** "you could also leave it overnight". */
    static boolean isOffered(SpokenQuantity said, Hearing heard) {
        return heard.phrases.within(Kind.OFFERED, said.start() - OFFER_REACH, said.start());
    }

    private static boolean isLook(SpokenQuantity said, Hearing heard) {
        return WHEN.contains(heard.words.text(said.start() - 1))
                && (heard.phrases.within(Kind.LOOKS, said.start() - LOOK_REACH, said.start())
                        || heard.phrases.within(Kind.LOOKS, said.end(), said.end() + LOOK_REACH));
    }

    private static boolean isIfNeeded(SpokenQuantity said, Hearing heard) {
        return heard.phrases.within(Kind.IF_NEEDED, said.end(), said.end() + 5)
                || heard.phrases.within(Kind.IF_NEEDED, said.start() - 6, said.start());
    }
}
