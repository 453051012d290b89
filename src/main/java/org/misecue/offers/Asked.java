package org.misecue.offers;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.WordStream;

/** "Could you use Greek yoghurt? You could. I'd do three quarters of a cup": a question that is answered with yes. */
final class Asked implements Proposal.Frame {

    private static final Pattern YES = Pattern.compile(
            "(?:(?!no\\b|not\\b|can't\\b|don't\\b|nope\\b)[\\w']+ ){0,4}?(?:yes|yep|yeah|you could|you can|of course|absolutely|certainly|they do|it does|sure)\\b.*");
    private static final int ANSWER = 8;
    private static final int AMOUNT_REACH = 14;

    private final Foods foods;
    private final WordStream words;
    private final Verdicts verdicts;

    Asked(Foods foods, Verdicts verdicts) {
        this.foods = foods;
        this.words = foods.words;
        this.verdicts = verdicts;
    }

    @Override
    public Optional<Proposal> at(int start) {
        Optional<Portion> use = inverted(start).or(() -> whether(start));
        if (use.isEmpty() || use.get().inRecipe()) {
            return Optional.empty();
        }
        Optional<Integer> named = placeOf(use.get());
        int end = named.isPresent()
                ? foods.ownAt(use.get().end() + placeWords(use.get().end()))
                        .map(Portion::end)
                        .orElse(use.get().end())
                : use.get().end();
        if (!YES.matcher(words.normal(end, end + ANSWER)).matches()) {
            return Optional.empty();
        }
        Optional<SpokenQuantity> amount = use.get().amount().or(() -> foods.amountIn(end, end + AMOUNT_REACH));
        return named.or(() -> foods.kin(use.get(), start, true))
                .map(line -> new Proposal(
                        start,
                        Math.max(end, amount.map(SpokenQuantity::end).orElse(end)),
                        line,
                        use.get().of(amount),
                        start,
                        start));
    }

    private Optional<Portion> inverted(int start) {
        boolean asks =
                words.text(start).matches("can|could") && words.text(start + 1).matches("you|i|we");
        OptionalInt behind = asks ? verdicts.useAt(start + 2) : OptionalInt.empty();
        return behind.isPresent() ? foods.at(behind.getAsInt()) : Optional.empty();
    }

    /** "to ask if apricots work". */
    private Optional<Portion> whether(int start) {
        return words.text(start).matches("if|whether")
                ? foods.at(start + 1).filter(use -> words.text(use.end()).matches("work|works|would|will"))
                : Optional.empty();
    }

    private int placeWords(int at) {
        return words.normal(at, at + 2).equals("instead of") ? 2 : 1;
    }

    private Optional<Integer> placeOf(Portion use) {
        boolean placed = words.text(use.end()).equals("for")
                || words.normal(use.end(), use.end() + 2).equals("instead of");
        return placed ? foods.ownAt(use.end() + placeWords(use.end())).map(foods::lineOf) : Optional.empty();
    }
}
