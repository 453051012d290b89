package org.misecue.offers;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.WordStream;

/** "If you can't get buttermilk, use yoghurt", "no buttermilk? use yoghurt". */
final class Lacking implements Proposal.Frame {

    private static final Pattern LACK =
            Pattern.compile("(?:(?:if|when|where|unless|because) (?:(?:for (?:any|some) reason|like me) )?"
                    + "(?:you|you're|you've|you'd|they|anyone|anybody|somebody|someone|the kids|there)|who)"
                    + "(?: (?:are|have|really|simply|just|ever|do|is|also|absolutely|would|family))*"
                    + " (?:can't (?:get|find|have|eat|do|stand|buy|take)|cannot (?:get|find|have|eat)"
                    + "|haven't(?: got)?|not (?:got|having|keen on|fond of|a fan of|into|fussed about)"
                    + "|don't (?:have|like|want|eat|fancy|do|own|drink|use|get|keep)|doesn't (?:like|want|eat)"
                    + "|out of|run out of|ran out of|short of|low on|short on|no|got no|hate|hates|dislike|rather not use"
                    + "|allergic to|missing|not a|never have)"
                    + "(?: (?:any|enough|the|a|some|hold of|your hands on))*");
    /** Recognisers leave the "if" out, and so do people: "don't like raisins", "ran out of icing sugar". */
    private static final Pattern BARE_LACK = Pattern.compile(
            "(?:don't (?:have|like|want|eat|fancy)|haven't got|(?:ran |run )?out of)(?: (?:any|the|enough))*");

    private static final Pattern SCARCE = Pattern.compile("(?:aren't|isn't|are not|is not|not)(?: \\w+)?? "
            + "(?:in season|available|to be had|around|your thing|to hand|in the shops)");
    private static final Pattern NOT_HERE = Pattern.compile(
            "(?:person|fan|lover|in the (?:house|cupboard|fridge|shops)|to hand|left|in|at home|where you are)\\b");
    private static final int REACH = 16;
    private static final int MORE = 6;

    private final Foods foods;
    private final WordStream words;
    private final Conclusion conclusion;

    Lacking(Foods foods, Conclusion conclusion) {
        this.foods = foods;
        this.words = foods.words;
        this.conclusion = conclusion;
    }

    /** A line of the recipe that somebody may not have, and where that has been said. */
    record Lack(int line, int end) {}

    @Override
    public Optional<Proposal> at(int start) {
        return lacked(start).flatMap(lack -> conclusion
                .from(lack.end())
                .filter(told -> !told.use().lines().contains(lack.line()))
                .filter(told -> !words.text(start).equals("no") || isAtOnce(told, lack.end()))
                .map(told -> new Proposal(start, told.use().end(), lack.line(), told.use(), told.verb(), lack.end())));
    }

    private static boolean isAtOnce(Conclusion.Told told, int end) {
        return told.verb() == end || told.use().start() == end;
    }

    Optional<Lack> lacked(int start) {
        String first = words.text(start);
        if (first.equals("no")) {
            boolean opens = words.border(start) || words.text(start - 1).matches("and|so|or|if|but");
            return opens ? own(start + 1, start) : Optional.empty();
        }
        if (words.border(start) && first.matches("don't|haven't|ran|run|out")) {
            Matcher bare = BARE_LACK.matcher(words.normal(start, start + REACH));
            return bare.lookingAt() ? own(start + bare.group().split(" ").length, start) : Optional.empty();
        }
        if (!first.matches("if|when|where|unless|who|because")) {
            return Optional.empty();
        }
        Matcher lack = LACK.matcher(words.normal(start, start + REACH));
        if (lack.lookingAt()) {
            return own(start + Foods.count(lack.group()), start);
        }
        return foods.ownAt(start + 1).flatMap(own -> {
            Matcher scarce = SCARCE.matcher(words.normal(own.end(), own.end() + MORE));
            return scarce.lookingAt()
                    ? Optional.of(new Lack(foods.lineOf(own), own.end() + Foods.count(scarce.group())))
                    : Optional.empty();
        });
    }

    private Optional<Lack> own(int at, int start) {
        return foods.ownOrPointed(at, start).map(own -> {
            Matcher more = NOT_HERE.matcher(words.normal(own.end(), own.end() + MORE));
            int end = own.end() + (more.lookingAt() ? Foods.count(more.group()) : 0);
            return new Lack(own.line(), end);
        });
    }
}
