package org.misecue.offers;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.WordStream;

/** "If all you've got is single cream that's fine", "if you've only got fresh yeast you want fifteen grams of it". */
final class Having implements Proposal.Frame {

    private static final Pattern HAVE = Pattern.compile(
            "if (?:(?:all|the only (?:one|thing)) (?:you've got|you have|you have got|you can get|you can find)(?: in)? is"
                    + "|you (?:only have|have only|only got|only have got|have only got|prefer|would rather have|would rather use|fancy|have|have got|use|buy|can only get|can get|do have)"
                    + "|you've (?:only got|got only|got)|you're using|you'd (?:rather have|rather use|rather|prefer)|it has to be)(?: (?:the|some|a|any))*");
    private static final Pattern FINE = Pattern.compile(
            "(?:(?:then|well|yes) )?(?:that is|it is|that|those are|they're|it|those|they|them)? ?(?:will|would)? ?(?:absolutely |just |perfectly |also )?(?:fine|ok|okay|works?|do|all right|alright|good|lovely|perfect)\\b.*");
    private static final Pattern POINTING = Pattern.compile("(?: ?of)? (?:that|it|those|them)\\b.*");
    private static final int REACH = 12;
    private static final int AMOUNT_REACH = 9;

    private final Foods foods;
    private final WordStream words;
    private final Conclusion conclusion;

    Having(Foods foods, Conclusion conclusion) {
        this.foods = foods;
        this.words = foods.words;
        this.conclusion = conclusion;
    }

    @Override
    public Optional<Proposal> at(int start) {
        if (!words.text(start).equals("if")) {
            return Optional.empty();
        }
        Matcher have = HAVE.matcher(words.normal(start, start + REACH));
        return have.lookingAt() ? of(start, start + Foods.count(have.group())) : Optional.empty();
    }

    private Optional<Proposal> of(int start, int name) {
        Optional<Portion> had = foods.anyAt(name).filter(food -> !food.inRecipe() && (food.known() || isSort(food)));
        if (had.isEmpty()) {
            return Optional.empty();
        }
        Optional<Integer> line = foods.kin(had.get(), start, true);
        boolean sort = words.text(had.get().end()).matches("sort|kind|one|ones|stuff|instead|then");
        int end = sort ? had.get().end() + 1 : had.get().end();
        Optional<Portion> than = words.text(end).equals("than") ? foods.ownAt(end + 1) : Optional.empty();
        if (than.isPresent()) {
            return than.map(own -> new Proposal(start, own.end(), foods.lineOf(own), had.get(), end, end));
        }
        if (line.isEmpty()) {
            return Optional.empty();
        }
        if (FINE.matcher(words.normal(end, end + 5)).matches()) {
            return Optional.of(new Proposal(start, end, line.get(), had.get(), end, end));
        }
        Optional<SpokenQuantity> amount =
                foods.amountIn(end, end + AMOUNT_REACH).filter(said -> isOfIt(said) && !saidByMe(end, said.start()));
        if (amount.isPresent()) {
            return Optional.of(new Proposal(
                    start, amount.get().end(), line.get(), had.get().of(amount), end, end));
        }
        return conclusion
                .from(end)
                .filter(told -> !told.use().inRecipe())
                .map(told -> new Proposal(start, told.use().end(), line.get(), told.use(), told.verb(), end));
    }

    /** "the fresh sort", "tinned". */
    private boolean isSort(Portion food) {
        String behind = words.text(food.end());
        return Foods.isAdjective(words.text(food.end() - 1)) || behind.matches("sort|kind|stuff|one|ones");
    }

    private boolean isOfIt(SpokenQuantity said) {
        boolean bare = foods.at(said.start()).isEmpty() && words.wall(said.end());
        return POINTING.matcher(" " + words.normal(said.end(), said.end() + 3)).matches()
                || bare
                || words.text(said.end()).matches("and|but|instead");
    }

    private boolean saidByMe(int from, int to) {
        for (int at = from; at < to; at++) {
            if (words.text(at).matches("i'm|i've|we're|we've|mine")) {
                return true;
            }
        }
        return false;
    }
}
