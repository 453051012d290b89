package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/**
 * How well a name near an amount fits it, by where it stands: "125 grams of butter", "butter … 125 grams", "125 of that".
 * The figures were set by ear on sentences of our own; the order between them matters, not their size.
 */
final class Scoring {

    /** At least this to count at all. */
    static final double ENOUGH = 4.5;

    /** From here on there is no real doubt. */
    static final double SURE = 8;

    private static final int REACH_BACK = 45;
    private static final int REACH_ON = 9;

    private static final Set<String> GLUE =
            Words.set("of the that this your my some our these those good nice lovely best um uh er erm like really "
                    + "very just big its you know sort kind fresh plain a an each is more");

    /** Words that begin another thought: a name behind them seldom belongs to the amount before them. */
    private static final Set<String> TURNS =
            Words.set("and then so now in into goes with for but because which if to till until on or while right okay "
                    + "from before after than");

    private static final Set<String> POINTING = Set.of("that", "those", "these", "them", "it", "this");
    private static final Set<String> COPULA = Words.set("is are was want need take use have got");
    private static final Set<String> OPENS = Words.set("now then next right okay and the your some so with for my our");
    private static final Set<String> FOLLOWS_TOPIC =
            Words.set("now so is um then well right these this okay are and you it");

    private Scoring() {}

    /** The score of the position alone; negative infinity if the name is out of reach. */
    static double position(SpokenQuantity said, NameHit name, Hearing heard) {
        if (!heard.sameSource(said.start(), name.start())) {
            return Double.NEGATIVE_INFINITY;
        }
        if (name.start() >= said.end()) {
            return ahead(said, name, heard);
        }
        return name.end() <= said.start() ? behind(said, name, heard) : Double.NEGATIVE_INFINITY;
    }

    private static double ahead(SpokenQuantity said, NameHit name, Hearing heard) {
        if (name.start() - said.end() > REACH_ON) {
            return Double.NEGATIVE_INFINITY;
        }
        double score = 10;
        for (int at = said.end(); at < name.start(); at++) {
            String word = heard.words.text(at);
            if (TURNS.contains(word)) {
                return Double.NEGATIVE_INFINITY;
            }
            score -= GLUE.contains(word) ? 0 : 2;
            score -= heard.words.border(at) ? 2 : 0;
        }
        score -= heard.words.border(name.start()) ? 2 : 0;
        boolean of = heard.words.text(said.end()).equals("of");
        boolean pointing = of && POINTING.contains(heard.words.text(said.end() + 1)) && name.start() > said.end() + 2;
        return pointing ? Double.NEGATIVE_INFINITY : of ? score + 1.5 : score;
    }

    private static double behind(SpokenQuantity said, NameHit name, Hearing heard) {
        int distance = said.start() - name.end();
        if (distance > REACH_BACK) {
            return Double.NEGATIVE_INFINITY;
        }
        double score = 8 - 0.2 * distance + (distance == 0 ? 2.5 : 0);
        int borders = 0;
        for (int at = name.end(); at < said.start() && borders < 3; at++) {
            borders += heard.words.border(at) ? 1 : 0;
        }
        score -= 0.5 * borders;
        score -= 1.4 * namesBetween(name, said.start(), heard);
        score += COPULA.contains(heard.words.text(said.start() - 1)) ? 0.7 : 0;
        score += isTopic(name, heard) ? 0.8 : 0;
        score -= isInPassing(name, heard) ? 3 : 0;
        return pointsBack(said, heard) ? score + 2.5 : score;
    }

    /** "of that", "of those", "of it". */
    static boolean pointsBack(SpokenQuantity said, Hearing heard) {
        return heard.words.text(said.end()).equals("of") && POINTING.contains(heard.words.text(said.end() + 1));
    }

    private static boolean isTopic(NameHit name, Hearing heard) {
        return FOLLOWS_TOPIC.contains(heard.words.text(name.end()))
                && (heard.words.border(name.start()) || OPENS.contains(heard.words.text(name.start() - 1)));
    }

    /** "You don't need that with self-raising", "it goes with the cream": named, but not what is being measured. */
    private static boolean isInPassing(NameHit name, Hearing heard) {
        String before = heard.words.text(name.start() - 1);
        return before.equals("with") || before.equals("without") || before.equals("like") || before.equals("than");
    }

    private static int namesBetween(NameHit name, int until, Hearing heard) {
        int between = 0;
        for (NameHit other : heard.names) {
            boolean inside = other.start() >= name.end() && other.end() <= until;
            if (inside && (!other.lines().equals(name.lines()) || !other.inRecipe())) {
                between++;
            }
        }
        return between;
    }
}
