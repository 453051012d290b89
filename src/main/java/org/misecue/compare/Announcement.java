package org.misecue.compare;

import java.util.OptionalInt;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** Finds where the speaker says that another batch than the written one is being made: "I'm making a double batch". */
final class Announcement {

    private static final int CLAUSE = 9;
    private static final Set<String> MAKERS =
            Words.set("i i'm i've we we're we've i'll we'll everything all this it today i'd");
    private static final Set<String> DOUBLED = Set.of("doubled", "doubling", "double", "tripled", "halved", "halving");
    private static final Set<String> THINGS =
            Set.of("the", "this", "it", "everything", "up", "so", "today", "all", "that", "whatever", "for", "here");
    private static final Set<String> NOT =
            Words.set("not don't didn't haven't isn't until never won't if when has would");

    private Announcement() {}

    /** How many written batches are announced; 1 where none are. */
    static RationalNumber of(Hearing heard) {
        for (int at = 0; at < heard.words.size(); at++) {
            RationalNumber factor = factorAt(heard, at);
            if (!factor.equals(Rationals.ONE) && isMeantNow(heard, at)) {
                return factor;
            }
        }
        return Rationals.ONE;
    }

    private static RationalNumber factorAt(Hearing heard, int at) {
        if (isOutright(heard, Kind.DOUBLE, at)) {
            return Rationals.of(2);
        }
        if (isOutright(heard, Kind.TRIPLE, at)) {
            return Rationals.of(3);
        }
        return isOutright(heard, Kind.HALF_BATCH, at) ? Rationals.of(1, 2) : Rationals.ONE;
    }

    /** Said with its noun ("double batch", "two lots") or its object: "double" alone is also a kind of cream. */
    private static boolean isOutright(Hearing heard, Kind kind, int at) {
        OptionalInt end = heard.phrases.endAt(kind, at);
        if (end.isEmpty()) {
            return false;
        }
        return end.getAsInt() - at > 1
                || (DOUBLED.contains(heard.words.text(at))
                        && !heard.words.text(at).equals("double")
                        && (THINGS.contains(heard.words.text(at + 1)) || heard.words.border(at + 1)))
                || (heard.words.text(at).equals("double") && isAllOfIt(heard, at));
    }

    /** "everything is double", "it's all doubled". */
    private static boolean isAllOfIt(Hearing heard, int at) {
        return heard.words.normal(at - 3, at).matches(".*\\b(everything is|it is all|all is|all of it is)\\b.*");
    }

    private static boolean isMeantNow(Hearing heard, int at) {
        int from = at;
        boolean maker = MAKERS.contains(heard.words.text(at));
        while (from > 0 && at - from < CLAUSE && !heard.words.border(from)) {
            from--;
            String word = heard.words.text(from);
            maker |= MAKERS.contains(word);
            if (NOT.contains(word) && at - from <= 4) {
                return false;
            }
        }
        boolean other = heard.phrases.within(Kind.OTHER_TIME, from, at + 8)
                || heard.phrases.within(Kind.OTHER_PEOPLE, from, at)
                || heard.phrases.within(Kind.ALTERNATIVE, from, at);
        return !other && (maker || at - from < 3);
    }
}
