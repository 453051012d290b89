package org.misecue.compare;

import java.util.List;
import java.util.Set;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.UnitWords;

/** "It's two tablespoons of cornflour, not teaspoons": what was said of the line in the denied unit is taken back. */
final class DeniedUnits {

    private static final Set<String> NOT = Set.of("not", "isn't", "aren't", "wasn't");
    private static final Set<String> ARTICLES = Set.of("a", "the");
    private static final int REACH = 12;

    private final Hearing heard;

    DeniedUnits(Hearing heard) {
        this.heard = heard;
    }

    /** The mentions of a line without those in a unit that is denied beside another one. */
    List<Mention> without(List<Mention> own) {
        if (own.size() < 2 || !heard.on(Mechanism.TAKEN_BACK)) {
            return own;
        }
        return own.stream()
                .filter(mention -> own.stream().noneMatch(other -> takesBack(other, mention)))
                .toList();
    }

    private boolean takesBack(Mention other, Mention mention) {
        return other.start() > mention.start()
                && other.quantity().unit() != mention.quantity().unit()
                && isDenied(
                        mention.quantity().unit(), Math.max(mention.end(), other.start() - REACH), other.end() + REACH);
    }

    private boolean isDenied(Unit unit, int from, int to) {
        for (int at = from; at < to; at++) {
            int behind = ARTICLES.contains(heard.words.text(at + 1)) ? at + 2 : at + 1;
            if (NOT.contains(heard.words.text(at))
                    && UnitWords.at(heard.words, behind)
                            .filter(denied -> denied.unit() == unit)
                            .isPresent()) {
                return true;
            }
        }
        return false;
    }
}
