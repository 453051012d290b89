package org.misecue.compare;

import java.util.EnumSet;
import java.util.Set;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** Times that are not how long something takes: "every ten minutes", "an hour ago", "have a peek at twenty", "turn the tray after ten". */
final class PassingTime {

    private static final int LOOK_REACH = 5;
    private static final int OFFER_REACH = 6;
    private static final int ERRAND_REACH = 9;
    private static final int ERRAND_BEHIND = 5;
    private static final Set<String> TURNS = Set.of("so", "right", "okay", "then", "now", "anyway", "but");
    private static final Set<String> SPEAKER = Set.of("i", "i've", "we", "we've", "me", "us");
    private static final Set<String> OWN = Set.of("i've", "we've");
    private static final Set<String> HAVING = Set.of("got", "have", "only", "had");
    private static final Set<String> ON_THESE = Set.of("on these", "on those", "on them", "on it", "on this");
    private static final Set<Kind> AT_WORK = EnumSet.range(Kind.FOR_BAKING, Kind.FOR_WORKING);
    private static final Set<String> WHEN = Set.of("at", "after", "from", "by", "around", "about");

    private PassingTime() {}

    static boolean is(SpokenQuantity said, Hearing heard) {
        return heard.on(Mechanism.PASSING_TIMES)
                && (heard.phrases.endsBefore(Kind.PASSING_TIME_BEFORE, said.start())
                        || heard.phrases
                                .endAt(Kind.PASSING_TIME_AFTER, said.end())
                                .isPresent()
                        || isOffered(said, heard)
                        || isLook(said, heard)
                        || isErrand(said, heard)
                        || isIfNeeded(said, heard));
    }

    /** "you could also leave it overnight". */
    static boolean isOffered(SpokenQuantity said, Hearing heard) {
        return heard.phrases.within(Kind.OFFERED, said.start() - OFFER_REACH, said.start());
    }

    /** "I've got kids at the pool and exactly forty minutes": what the speaker has, not what the bake takes. */
    private static boolean isErrand(SpokenQuantity said, Hearing heard) {
        for (int at = said.start() - 1; at > said.start() - ERRAND_REACH && !heard.words.border(at + 1); at--) {
            boolean me = SPEAKER.contains(heard.words.text(at)) && HAVING.contains(heard.words.text(at + 1));
            boolean mine = at == said.start() - 1 && OWN.contains(heard.words.text(at));
            boolean given = heard.words.text(at).equals("gives") && SPEAKER.contains(heard.words.text(at + 1));
            if (me || mine || given) {
                int from = at;
                return !heard.phrases.within(Kind.FOR_BAKING, from - ERRAND_REACH, from)
                        && !ON_THESE.contains(heard.words.normal(said.end(), said.end() + 2))
                        && !heard.words.normal(said.end(), said.end() + 3).equals("on the timer")
                        && AT_WORK.stream()
                                .noneMatch(kind -> heard.phrases.within(kind, from, turn(said.end(), heard)));
            }
            if (TURNS.contains(heard.words.text(at))) {
                return false;
            }
        }
        return false;
    }

    private static int turn(int from, Hearing heard) {
        int at = from;
        while (at < from + ERRAND_BEHIND && !TURNS.contains(heard.words.text(at))) {
            at++;
        }
        return at;
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
