package org.misecue.compare;

import java.util.Set;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/**
 * Names said in passing: "like the butter", "before the flour", "straight on top of the sugar". They are named, but they
 * are not what is being measured.
 */
final class Passing {

    private static final Set<String> PREPOSITIONS = Words.set(
            "with without no not like than after before into onto over between around through under against as till until when "
                    + "while if because");
    private static final Set<String> PREPOSITIONS_OF = Set.of("of", "in", "from", "with");
    private static final Set<String> DETERMINERS =
            Words.set("the your my our that this any more some plain all an a its their own");
    private static final Set<String> PERCENT = Set.of("percent", "%", "cent");
    private static final Set<String> SHARES = Set.of("percent", "%", "cent", "size", "instead", "out", "top");

    /** "the flour is exactly half of the nuts". */
    private static final Set<String> PARTS = Set.of("half", "third", "quarter");

    private static final Set<String> RECKONED = Set.of("is", "exactly", "just", "be", "about", "a");
    private static final Set<String> BASES = Set.of("what", "whatever", "own", "times");
    private static final Set<String> BRINGS_WITH =
            Set.of("in", "and", "then", "so", "now", "along", "start", "starts", "begin", "begins");

    private static final Set<String> HEATS = Words.set("hot warm boiling cold");
    private static final Set<String> BATHS = Words.set("in into under through");
    private static final Set<String> TOOLS = Words.set(
            "spoon spoons knife fingers hands hand blade scraper spatula cutter scissors tin brush finger tablespoon teaspoon");

    private Passing() {}

    /** "two percent of the flour", "half what the milk was", "on top of the sugar". */
    private static boolean isBase(String before, Hearing heard, int at) {
        if (PERCENT.contains(heard.words.text(at - 3))
                && heard.words.normal(at - 2, at).equals("of the")) {
            return true; // "fifteen percent of the dough flour"
        }
        String twoBefore = heard.words.text(at - 1);
        boolean ofShare = (before.equals("of") || before.equals("on"))
                && (SHARES.contains(twoBefore)
                        || (PARTS.contains(twoBefore) && RECKONED.contains(heard.words.text(at - 2))));
        return ofShare || BASES.contains(before);
    }

    /** Whether it is only what another amount is reckoned by: "two percent of the flour", "the same as the sugar". */
    static boolean isMeasure(NameHit name, Hearing heard) {
        int at = beforeDeterminer(name.start() - 1, heard);
        String before = heard.words.text(at);
        return (before.equals("as") && heard.words.text(at - 1).equals("same")) || isBase(before, heard, at);
    }

    /** "just the plain, no semolina": what does not go in is not measured. */
    static boolean isDenied(NameHit name, int distance, Hearing heard) {
        int at = beforeDeterminer(name.start() - 1, heard);
        String before = heard.words.border(at + 1) ? "" : heard.words.text(at);
        boolean instead = before.equals("of")
                && (heard.words.text(at - 1).equals("instead")
                        || heard.words.text(at - 1).equals("place"));
        return instead
                || before.equals("no")
                || before.equals("without")
                || (before.equals("not") && distance > 1)
                || Clauses.isRefused(name, heard);
    }

    /** "out of its syrup" is heard as "out of it is syrup". */
    private static int beforeDeterminer(int at, Hearing heard) {
        boolean its = heard.words.text(at).equals("is")
                && heard.words.text(at - 1).equals("it")
                && PREPOSITIONS_OF.contains(heard.words.text(at - 2));
        if (its) {
            return at - 2;
        }
        return DETERMINERS.contains(heard.words.text(at)) ? at - 1 : at;
    }

    /** "dip the spoon in hot water", "run the knife under water": nothing that goes in. */
    private static boolean isToolsBath(NameHit name, int before, Hearing heard) {
        int behindHeat = HEATS.contains(heard.words.text(before)) ? before - 1 : before;
        int at = beforeDeterminer(behindHeat, heard);
        return name.name().endsWith("water")
                && BATHS.contains(heard.words.text(at))
                && TOOLS.contains(heard.words.text(at - 1));
    }

    /** "fifty grams on the rhubarb": that is not what was weighed. */
    private static boolean isUnderIt(int at, Hearing heard) {
        return (heard.words.text(at).equals("on") || heard.words.text(at).equals("over"))
                && heard.quantityBefore(at)
                        .filter(said -> said.end() == at && said.manner() == SpokenQuantity.Manner.MEASURED)
                        .isPresent();
    }

    /** "back to the cinnamon", "not finished with the treacle": that is spoken of from here on. */
    private static boolean isComeBackTo(int at, Hearing heard) {
        String before = heard.words.text(at - 1);
        return switch (heard.words.text(at)) {
            case "to" -> before.equals("back") || before.equals("on");
            case "with" -> before.equals("finished") || before.equals("done");
            default -> false;
        };
    }

    /** Thought through; {@link Hearing#isPassing} keeps the answer. */
    static boolean decide(NameHit name, Hearing heard) {
        if (!heard.on(Mechanism.PASSING_NAMES)) {
            return false;
        }
        int at = beforeDeterminer(name.start() - 1, heard);
        if (isComeBackTo(at, heard)) {
            return false;
        }
        boolean toldOf =
                heard.on(Mechanism.PURPOSES) && (Clauses.isPurpose(name, heard) || Clauses.isTold(name, heard));
        if (new Outcomes(heard).isOne(name)) {
            return true;
        }
        if (toldOf || heard.toldElsewhere(name) || Clauses.isRefused(name, heard)) {
            return true;
        }
        String before = heard.words.text(at);
        if (isToolsBath(name, at, heard) || isUnderIt(at, heard)) {
            return true;
        }
        if (!PREPOSITIONS.contains(before) || heard.words.border(at + 1)) {
            return isBase(before, heard, at);
        }
        // "in with the buttermilk", "and with it the coconut": that is how things go in.
        return !(before.equals("with") && (heard.words.border(at) || BRINGS_WITH.contains(heard.words.text(at - 1))));
    }
}
