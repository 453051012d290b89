package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
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

    /** A name right before or behind its amount has at least this. */
    static final double ADJACENT = 9;

    static final int REACH_BACK = 70;
    static final int REACH_ON = 9;

    /** What each word between costs, and what it costs where the name is still what is talked about. */
    private static final double PER_WORD = 0.2;

    private static final double PER_WORD_ON_TOPIC = 0.08;
    private static final double PER_WORD_BARE_ON_TOPIC = 0.16;
    private static final int NEAR = 8;
    private static final double NAME_BETWEEN = 5;
    private static final double AHEAD = 9.6;
    private static final double FOREIGN_BARE = 4;
    private static final double RIGHT_BEFORE = 2.5;
    private static final double WALL = 7;
    private static final double IN_PASSING = 3;
    private static final double AS_MEASURE = 6;
    private static final int UNWRITTEN_REACH = 14;
    private static final double PAUSE = 2;

    /** A bare number needs more to go by. */
    static final double ENOUGH_FOR_BARE = 5.3;

    private static final Set<String> GLUE =
            Words.set("of the that this your my some our these those good nice lovely best um uh er erm like really "
                    + "very just big its you know sort kind fresh plain a an each is more");

    /** Words that begin another thought: a name behind them seldom belongs to the amount before them. */
    private static final Set<String> TURNS =
            Words.set("and then so now in into goes with for but because which if to till until on or while right okay "
                    + "from before after than not instead");

    /** "two hundred and fifty grams. The butter must be cold": it is hardly ever "grams the butter". */
    private static final Set<String> DETERMINERS = Set.of("the", "my", "your", "our", "these", "some");

    private static final double BEGINS_ANEW = 2;
    private static final double OWN_BEHIND = 4;

    private static final Set<String> COPULA = Words.set("is are was want need take use have got");
    private static final Set<String> OPENS = Words.set("now then next right okay and the your some so with for my our");
    private static final Set<String> FOLLOWS_TOPIC =
            Words.set("now so is um then well right these this okay are and you it");

    private Scoring() {}

    /** The score of the position alone; negative infinity if the name is out of reach. */
    static double position(SpokenQuantity said, NameHit name, Hearing heard) {
        if (!heard.together(said.start(), name.start())) {
            return Double.NEGATIVE_INFINITY;
        }
        if (name.start() >= said.end()) {
            return ahead(said, name, heard);
        }
        return name.end() <= said.start() ? behind(said, name, heard) : Double.NEGATIVE_INFINITY;
    }

    /** "125 grams of butter", "butter, 125 grams": nothing else is nearer. */
    static boolean isAdjacent(SpokenQuantity said, NameHit name, Hearing heard) {
        boolean rightBefore = said.start() - name.end() == 0 && !heard.isPassing(name);
        return rightBefore || (name.start() >= said.end() && position(said, name, heard) >= ADJACENT);
    }

    private static double ahead(SpokenQuantity said, NameHit name, Hearing heard) {
        if (name.start() - said.end() > REACH_ON) {
            return Double.NEGATIVE_INFINITY;
        }
        double score = AHEAD;
        for (int at = said.end(); at < name.start(); at++) {
            String word = heard.words.text(at);
            if (TURNS.contains(word) && !(at == said.end() && isFor(word, name, heard))) {
                return Double.NEGATIVE_INFINITY;
            }
            score -= GLUE.contains(word) ? 0 : 2;
            score -= borderCost(at, heard);
        }
        score -= borderCost(name.start(), heard);
        score -= heard.namesIn(said.end(), name.start()).isEmpty() ? 0 : NAME_BETWEEN;
        score -= DETERMINERS.contains(heard.words.text(said.end())) ? BEGINS_ANEW : 0;
        score -= heard.nameFirst.isOne(name) ? OWN_BEHIND : 0;
        boolean of = heard.words.text(said.end()).equals("of");
        boolean pointing = of
                && PointerGrammar.POINTING.contains(heard.words.text(said.end() + 1))
                && name.start() > said.end() + 2
                && !heard.words.text(said.end() + 2).equals("is");
        boolean is = heard.words.text(said.end()).equals("is") && name.start() == said.end() + 1;
        return pointing ? Double.NEGATIVE_INFINITY : of || is ? score + 1.9 : score;
    }

    /** "five grams for the yeast". */
    private static boolean isFor(String word, NameHit name, Hearing heard) {
        int at = name.start() - 1;
        return word.equals("for")
                && heard.words.text(at - 1).equals("for")
                && Set.of("the", "my", "your", "this").contains(heard.words.text(at));
    }

    private static double borderCost(int at, Hearing heard) {
        return heard.words.wall(at) ? WALL : heard.words.border(at) ? PAUSE : 0;
    }

    private static double behind(SpokenQuantity said, NameHit name, Hearing heard) {
        int distance = said.start() - name.end();
        boolean counted = said.manner() == Manner.BARE;
        if (distance > REACH_BACK
                || (!name.inRecipe() && counted && !saysUnwritten(name, said, heard) && distance > 1)) {
            return Double.NEGATIVE_INFINITY;
        }
        if (Passing.isDenied(name, distance, heard)) {
            return Double.NEGATIVE_INFINITY;
        }
        boolean pointsBack = pointsBack(said, heard);
        int between = topicsBetween(name, said.start(), pointsBack && !counted, heard);
        boolean passing = heard.isPassing(name);
        double perWord = between > 0 || passing || !name.inRecipe()
                ? PER_WORD
                : counted ? PER_WORD_BARE_ON_TOPIC : PER_WORD_ON_TOPIC;
        double score = 8 - PER_WORD * Math.min(distance, NEAR) - perWord * Math.max(0, distance - NEAR);
        score += distance == 0 ? 2.5 : 0;
        score -= 0.5 * borders(name.end(), said.start(), heard);
        score -= 1.4 * between;
        boolean copula = COPULA.contains(heard.words.text(said.start() - 1));
        score += copula ? distance == 1 ? RIGHT_BEFORE : 0.7 : 0;
        score += isTopic(name, heard) ? 0.8 : 0;
        score -= passing ? (Passing.isMeasure(name, heard) ? AS_MEASURE : IN_PASSING) : 0;
        score -= !name.inRecipe() && !pointsBack && distance > 3 && !saysUnwritten(name, said, heard) ? 2.5 : 0;
        score -= !name.inRecipe() && counted ? FOREIGN_BARE : 0;
        return pointsBack ? score + 2.5 : score;
    }

    private static int borders(int from, int to, Hearing heard) {
        int borders = 0;
        for (int at = from; at < to && borders < 3; at++) {
            borders += heard.words.border(at) ? 1 : 0;
        }
        return borders;
    }

    /** "of that", "of those", "of it", or the same before the amount: "of those you want sixty". */
    static boolean pointsBack(SpokenQuantity said, Hearing heard) {
        if (heard.words.text(said.end()).equals("of")
                && PointerGrammar.POINTING.contains(heard.words.text(said.end() + 1))) {
            return true;
        }
        for (int at = said.start() - 2; at >= said.start() - 5; at--) {
            if (heard.words.text(at).equals("of") && PointerGrammar.POINTING.contains(heard.words.text(at + 1))) {
                return true;
            }
        }
        return false;
    }

    /** "some malt extract, it's not written down, I've put two tablespoons". */
    static boolean saysUnwritten(NameHit name, SpokenQuantity said, Hearing heard) {
        int from = Math.min(name.start(), said.start()) - UNWRITTEN_REACH;
        int to = Math.max(name.end(), said.end()) + UNWRITTEN_REACH;
        return heard.phrases.within(Kind.NOT_WRITTEN, from, to);
    }

    private static boolean isTopic(NameHit name, Hearing heard) {
        return FOLLOWS_TOPIC.contains(heard.words.text(name.end()))
                && (heard.words.border(name.start()) || OPENS.contains(heard.words.text(name.start() - 1)));
    }

    /** How many other things were spoken of since the name. */
    private static int topicsBetween(NameHit name, int until, boolean pointsBack, Hearing heard) {
        int between = 0;
        for (NameHit other : heard.namesIn(name.end(), until)) {
            boolean another = other.inRecipe()
                    ? !other.lines().equals(name.lines()) && heard.takesAmounts(other)
                    : pointsBack && !other.name().endsWith("water");
            if (another && other.end() <= until && !heard.isPassing(other)) {
                between++;
            }
        }
        return between;
    }
}
