package org.misecue.compare;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.Words;

/** "a hundred and fifty, no, sorry, a hundred and twenty five": what stood before is taken back at once. */
final class Repairs {

    /** How far behind an amount a repair of it may come without saying that it is one. */
    private static final int REACH = 40;

    /** Words that repair only when the new amount comes soon. */
    private static final Set<String> WEAK = Words.set("no nope actually rather wait sorry");

    private static final int WEAK_REACH = 14;

    /** What may follow a "no" that takes something back; before anything else it is a plain word. */
    private static final Set<String> AFTER_NO = Words.set(
            "it that i wait sorry not no hang hold tell don't you make scratch what is let so actually there we well um "
                    + "uh er erm oh a an that's the they it's but ma'am sir love darling honey dear mate pet");

    private final Hearing heard;

    Repairs(Hearing heard) {
        this.heard = heard;
    }

    boolean repairs(Further amount) {
        return amount.distance() <= REACH && isRepaired(from(amount.own()), amount.start());
    }

    /** Where a repair may have begun: "No wait. Three was how she made it, two": the three repaired nothing yet. */
    static int from(List<Mention> own) {
        Mention last = own.get(own.size() - 1);
        if (last.role() == Role.CORRECTS && own.size() > 1) {
            Mention before = own.get(own.size() - 2);
            if (before.quantity().equals(last.quantity()) && last.start() - before.end() <= REACH) {
                return before.end();
            }
        }
        return last.end();
    }

    /** Whether the speaker takes back what stood before, somewhere in {@code [from, to)}. */
    boolean isRepaired(int from, int to) {
        if (!heard.on(Mechanism.REPAIR)) {
            return false;
        }
        for (int at = Math.max(0, from); at < to; at++) {
            OptionalInt end = heard.phrases.endAt(Kind.REPAIR, at);
            if (end.isPresent() && end.getAsInt() <= to && !isIdle(at, end.getAsInt(), to)) {
                return true;
            }
        }
        return false;
    }

    /** Whether the words at the index take nothing back although they could. */
    private boolean isIdle(int at, int end, int to) {
        if (heard.phrases.endAt(Kind.NO_REPAIR, at).isPresent()) {
            return true;
        }
        String word = heard.words.text(at);
        if (word.equals("should")) {
            return !thenAmount(end);
        }
        boolean weak = end == at + 1 && WEAK.contains(word);
        return weak && (to - end > WEAK_REACH || isPlainNo(word, end));
    }

    /** "no sugar": a no that goes on with neither an amount nor another start. */
    private boolean isPlainNo(String word, int end) {
        boolean no = word.equals("no") || word.equals("nope");
        return no && !thenAmount(end) && !heard.words.border(end) && !AFTER_NO.contains(heard.words.text(end));
    }

    private boolean thenAmount(int end) {
        return heard.quantityFrom(end).filter(next -> next.start() <= end + 1).isPresent();
    }
}
