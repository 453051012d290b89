package org.misecue.offers;

import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** "Swap the hazelnuts for walnuts", "substitute pecans for the hazelnuts", "the plums can be replaced by apples". */
final class Swapping implements Proposal.Frame {

    private static final Set<String> SWAP = Words.set(
            "swap swapped swapping substitute substituted substituting sub replace replaced replacing change switch switched "
                    + "exchange trade");
    private static final Set<String> FOR = Words.set("for with by to");

    private final Foods foods;
    private final WordStream words;
    private int continues = -1;

    Swapping(Foods foods) {
        this.foods = foods;
        this.words = foods.words;
    }

    @Override
    public Optional<Proposal> at(int start) {
        int verb = start;
        boolean more = start == continues && words.text(start).equals("and");
        if (!SWAP.contains(words.text(start)) && !more) {
            return Optional.empty();
        }
        int at = start + 1;
        while (words.text(at).matches("out|in|over|up")) {
            at++;
        }
        int object = at;
        Optional<Proposal> found = passive(verb, object).or(() -> active(verb, object));
        found.ifPresent(swap -> continues = swap.end());
        return found;
    }

    private Optional<Proposal> active(int verb, int at) {
        Optional<Portion> one = foods.anyAt(at);
        if (one.isEmpty() || words.text(at).matches("it|them|that|those|these")) {
            return pointed(verb, at);
        }
        int joint = one.get().end();
        boolean inPlace =
                words.text(joint).equals("in") && words.text(joint + 1).matches("place|for");
        if (!FOR.contains(words.text(joint)) && !inPlace) {
            return Optional.empty();
        }
        boolean of = inPlace && words.text(joint + 2).equals("of");
        int inPlaceEnd = of ? joint + 3 : joint + 2;
        int next = inPlace ? inPlaceEnd : joint + 1;
        return foods.anyAt(next).flatMap(other -> of(verb, one.get(), other));
    }

    /** "you can swap that for brown sugar": what was spoken of last. */
    private Optional<Proposal> pointed(int verb, int at) {
        return foods.ownOrPointed(at, verb)
                .filter(own -> FOR.contains(words.text(own.end())))
                .flatMap(own -> foods.anyAt(own.end() + 1)
                        .filter(use -> use.known() && !use.lines().contains(own.line()))
                        .map(use -> new Proposal(verb, use.end(), own.line(), use, verb, verb)));
    }

    /** The recipe's own is the one whose place is taken; of two, the first. */
    private Optional<Proposal> of(int verb, Portion one, Portion other) {
        Portion own = one.inRecipe() ? one : other;
        Portion use = one.inRecipe() ? other : one;
        if (!own.inRecipe() || use.lines().equals(own.lines())) {
            return Optional.empty();
        }
        return Optional.of(new Proposal(verb, Math.max(one.end(), other.end()), foods.lineOf(own), use, verb, verb));
    }

    private Optional<Proposal> passive(int verb, int at) {
        boolean be = words.text(verb - 1).equals("be") && FOR.contains(words.text(at));
        if (!be) {
            return Optional.empty();
        }
        int end = verb - 1;
        while (words.text(end - 1).matches("can|could|may|might|easily|also|always|happily")) {
            end--;
        }
        Optional<Portion> own = foods.before(end).filter(Portion::inRecipe);
        return own.flatMap(food -> foods.anyAt(at + 1)
                .map(use -> new Proposal(food.start(), use.end(), foods.lineOf(food), use, verb, food.start())));
    }
}
