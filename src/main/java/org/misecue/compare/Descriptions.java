package org.misecue.compare;

import java.util.HashSet;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/** Which of several lines of one name is meant, by how the thing is described and by what is known of it. */
final class Descriptions {

    private static final double DESCRIBED = 1.6;
    private static final double MOST_DESCRIBED = 3;
    private static final double KNOWN_OF_IT = 5;
    private static final int BEFORE = 4;
    private static final int AFTER = 4;

    private final Hearing heard;
    private final Mentions mentions;

    Descriptions(Hearing heard, Mentions mentions) {
        this.heard = heard;
        this.mentions = mentions;
    }

    /** "sugar, the dark one": words of one line and not of the others, said about the name, or an amount known of it. */
    double of(SpokenQuantity said, NameHit name, int line) {
        if (name.lines().size() < 2 || heard.isPassing(name) || !heard.on(Mechanism.DESCRIPTIONS)) {
            return 0;
        }
        return described(said, name, ownWords(name, line)) + (isKnownOf(said, line) ? KNOWN_OF_IT : 0);
    }

    private Set<String> ownWords(NameHit name, int line) {
        Set<String> own = new HashSet<>(describing(heard.lines.get(line)));
        name.lines().stream()
                .filter(other -> other != line)
                .forEach(other -> own.removeAll(describing(heard.lines.get(other))));
        return own;
    }

    /** What it is, and what has been done to it: "chopped hazelnuts" are not the ground ones. */
    private static Set<String> describing(IngredientLine line) {
        return Words.content(line.ingredient() + " " + line.preparation());
    }

    private double described(SpokenQuantity said, NameHit name, Set<String> own) {
        int before = heard.quantityBefore(said.start()).map(SpokenQuantity::end).orElse(0);
        int from = Math.max(before, Math.min(name.start(), said.start()) - BEFORE);
        int to = Math.max(name.end(), said.end()) + AFTER;
        double score = 0;
        for (int at = Math.max(0, from); at < to && score < MOST_DESCRIBED; at++) {
            score += own.contains(Words.singular(heard.words.text(at))) ? DESCRIBED : 0;
        }
        return score;
    }

    private boolean isKnownOf(SpokenQuantity said, int line) {
        return said.isAtLeast(Rationals.of(20))
                && mentions.of(line).stream()
                        .anyMatch(mention -> mention.quantity().amount().equals(said.amount()));
    }
}
