package org.misecue.compare;

import java.util.OptionalInt;
import java.util.Set;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;

/** For whom an amount is said where two batches are talked of: "one in mine, two in yours". */
enum Whose {
    /** For those who bake the written batch. */
    VIEWERS,
    /** For the batch that is on the counter. */
    MINE,
    UNTOLD;

    private static final Set<String> FORWARD = Set.of("you", "you'd", "you'll", "you're", "so");
    private static final Set<String> EACH = Set.of("each", "apiece");
    private static final int EACH_REACH = 5;
    private static final Set<String> ANEW = Set.of("now", "next", "then", "right");
    private static final int LEFT_REACH = 22;
    private static final int CLAUSE_BEFORE = 7;
    private static final int CLAUSE_AFTER = 8;

    static Whose of(Mention mention, Hearing heard) {
        int next = nextAmount(heard, mention.end());
        if (heard.pointedAtViewers.contains(mention.start())
                || isOfEach(mention, heard, next)
                || isLeft(mention, heard, next)) {
            return VIEWERS;
        }
        int until = Math.min(mention.end() + CLAUSE_AFTER, next);
        for (int at = mention.end(); at < until && !heard.words.text(at).equals("so"); at++) {
            if (heard.phrases.endAt(Kind.VIEWER, at).isPresent()) {
                // "for you" is said of what stands before it, "you need" of what comes.
                return FORWARD.contains(heard.words.text(at)) ? before(mention, heard) : VIEWERS;
            }
            if (heard.phrases.endAt(Kind.MINE, at).isPresent()) {
                return MINE;
            }
        }
        return before(mention, heard);
    }

    private static Whose before(Mention mention, Hearing heard) {
        int last =
                heard.quantityBefore(mention.start()).map(SpokenQuantity::end).orElse(0);
        int from = Math.max(mention.start() - CLAUSE_BEFORE, afterOthers(last, mention, heard));
        OptionalInt viewer = heard.phrases.lastWithin(Kind.VIEWER, from, mention.start());
        OptionalInt mine = heard.phrases.lastWithin(Kind.MINE, from, mention.start());
        if (viewer.isEmpty() && mine.isEmpty()) {
            return UNTOLD;
        }
        return mine.orElse(-1) < viewer.orElse(-1) ? VIEWERS : MINE;
    }

    /** "a hundred for you, oil three": that was said for the amount before, where something else is named since. */
    private static int afterOthers(int last, Mention mention, Hearing heard) {
        int behind = heard.phrases.endAt(Kind.VIEWER, last).orElse(last);
        boolean named =
                behind > last && !heard.namesIn(behind, mention.end() + 3).isEmpty();
        return named ? behind : last;
    }

    /** "two hundred and forty each", "a teaspoon in each bowl": where several are made, each is one of them. */
    private static boolean isOfEach(Mention mention, Hearing heard, int next) {
        int until = Math.min(mention.end() + EACH_REACH, next);
        for (int at = mention.end(); at < until && !heard.words.wall(at); at++) {
            if (EACH.contains(heard.words.text(at))) {
                return true;
            }
        }
        return false;
    }

    /** "two tablespoons, and that isn't halved either": the same in both. */
    private static boolean isLeft(Mention mention, Hearing heard, int next) {
        int until = mention.end();
        while (until < Math.min(mention.end() + LEFT_REACH, next) && !ANEW.contains(heard.words.text(until))) {
            until++;
        }
        return heard.phrases.within(Kind.NOT_DOUBLED, mention.end(), until)
                || heard.phrases.within(Kind.NOT_DOUBLED, mention.start() - CLAUSE_BEFORE, mention.start());
    }

    private static int nextAmount(Hearing heard, int from) {
        return heard.quantityFrom(from).map(SpokenQuantity::start).orElse(heard.words.size());
    }
}
