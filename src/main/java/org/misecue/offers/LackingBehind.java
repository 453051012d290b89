package org.misecue.offers;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.offers.Proposal.Frame;
import org.misecue.spoken.WordStream;

/**
 * The other way round: "any hard cheese will do if you haven't got cheddar", and with the reason told as a fact: "ricotta
 * can be hard to get, cottage cheese is fine".
 */
final class LackingBehind implements Frame {

    private static final Pattern HARD_TO_GET =
            Pattern.compile("(?:can be|is|are|isn't always|aren't always|might be) (?:a bit |quite |really |very )?"
                    + "(?:hard|tricky|difficult|expensive|dear|pricey|easy)(?: to (?:get|find|come by|get hold of))?");
    private static final int REACH = 9;

    private final Foods foods;
    private final WordStream words;
    private final Verdicts verdicts;
    private final Lacking lacking;
    private final Conclusion conclusion;

    LackingBehind(Foods foods, Verdicts verdicts, Lacking lacking, Conclusion conclusion) {
        this.foods = foods;
        this.words = foods.words;
        this.verdicts = verdicts;
        this.lacking = lacking;
        this.conclusion = conclusion;
    }

    @Override
    public Optional<Proposal> at(int start) {
        return approved(start).or(() -> hardToGet(start));
    }

    private Optional<Proposal> approved(int start) {
        OptionalInt told = verdicts.useAt(start);
        Optional<Portion> use = told.isPresent()
                ? foods.anyAt(told.getAsInt())
                : foods.anyAt(start).filter(food -> verdicts.servesAt(food.end()));
        return use.flatMap(food -> lack(food.end())
                .filter(lack -> !food.lines().contains(lack.line()))
                .map(lack -> new Proposal(
                        start, lack.end(), lack.line(), food, told.isPresent() ? start : food.end(), start)));
    }

    /** The condition, in the same sentence. */
    private Optional<Lacking.Lack> lack(int from) {
        for (int at = from; at < from + REACH && (at == from || !words.wall(at)); at++) {
            if (words.text(at).matches("if|when|unless")) {
                return lacking.lacked(at);
            }
        }
        return Optional.empty();
    }

    private Optional<Proposal> hardToGet(int start) {
        return foods.ownAt(start).flatMap(own -> {
            Matcher hard = HARD_TO_GET.matcher(words.normal(own.end(), own.end() + REACH));
            if (!hard.lookingAt() || hard.group().endsWith("easy")) {
                return Optional.empty();
            }
            int end = own.end() + hard.group().split(" ").length;
            int line = foods.lineOf(own);
            return conclusion
                    .from(end)
                    .filter(told -> !told.use().lines().contains(line))
                    .map(told -> new Proposal(start, told.use().end(), line, told.use(), told.verb(), end));
        });
    }
}
