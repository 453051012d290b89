package org.misecue.offers;

import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.spoken.WordStream;

/** "Instead of vanilla, almond extract would be lovely", "use yoghurt instead of buttermilk". */
final class InsteadOf implements Proposal.Frame {

    private static final int REACH = 8;

    private final Foods foods;
    private final WordStream words;
    private final Verdicts verdicts;
    private final Conclusion conclusion;

    InsteadOf(Foods foods, Verdicts verdicts, Conclusion conclusion) {
        this.foods = foods;
        this.words = foods.words;
        this.verdicts = verdicts;
        this.conclusion = conclusion;
    }

    @Override
    public Optional<Proposal> at(int start) {
        OptionalInt behind = comparison(start);
        if (behind.isEmpty()) {
            return Optional.empty();
        }
        return foods.ownOrPointed(behind.getAsInt(), start)
                .flatMap(own -> before(start, own).or(() -> after(start, own)));
    }

    private OptionalInt comparison(int at) {
        String two = words.normal(at, at + 2);
        if (two.equals("instead of") || two.equals("rather than")) {
            return OptionalInt.of(at + 2);
        }
        return words.normal(at, at + 3).equals("in place of") ? OptionalInt.of(at + 3) : OptionalInt.empty();
    }

    /** The food before it, and the verb that takes it. */
    private Optional<Proposal> before(int start, Foods.Own own) {
        if (words.wall(start)) {
            return Optional.empty();
        }
        int end = beforeParticles(start);
        Optional<Portion> use = foods.before(end).or(() -> pleasing(end)).or(() -> unknownBefore(end));
        return use.filter(food -> !food.lines().contains(own.line()))
                .map(food -> new Proposal(
                        food.start(), own.end(), own.line(), food, verbBefore(food.start()), verbBefore(food.start())));
    }

    /** The "in there" of "put oat milk in there rather than the milk". */
    private int beforeParticles(int start) {
        int end = start;
        while (words.text(end - 1).matches("in|up|there|here") && !words.wall(end)) {
            end--;
        }
        return end;
    }

    /** "lime would work in place of the lemon". */
    private Optional<Portion> pleasing(int end) {
        for (int at = end - 1; at > end - REACH && at > 0 && !words.wall(at); at--) {
            if (verdicts.pleasesAt(at) && foods.before(at).isPresent()) {
                return foods.before(at);
            }
        }
        return Optional.empty();
    }

    private Optional<Portion> unknownBefore(int end) {
        for (int at = end - 1; at > end - REACH && at >= 0 && !words.wall(at + 1); at--) {
            OptionalInt use = verdicts.useAt(at);
            if (use.isPresent()) {
                return foods.anyAt(use.getAsInt()).filter(food -> food.end() == end);
            }
        }
        return Optional.empty();
    }

    /** The verb whose object the food is; the food itself where it is a subject. */
    private int verbBefore(int food) {
        return Math.max(0, food - 1);
    }

    private Optional<Proposal> after(int start, Foods.Own own) {
        return conclusion
                .from(own.end())
                .or(() -> liked(own.end()))
                .filter(told -> !told.use().lines().contains(own.line()))
                .map(told -> new Proposal(start, told.use().end(), own.line(), told.use(), told.verb(), own.end()));
    }

    /** "you might like chopped pistachios". */
    private Optional<Conclusion.Told> liked(int from) {
        for (int at = from; at < from + REACH; at++) {
            if (words.text(at).matches("like|love|enjoy") && words.text(from).startsWith("you")) {
                int verb = at;
                return foods.at(at + 1).map(food -> new Conclusion.Told(food, verb));
            }
        }
        return Optional.empty();
    }
}
