package org.misecue.offers;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/** How much of what is offered: said outright, or told by what is written. */
record OfferedAmount(Optional<Quantity> quantity, boolean same) {

    private static final String AMOUNT = "(?:amount|quantity|weight|number|measure|volume)";
    private static final Pattern SAME =
            Pattern.compile(".*\\b(?:(?:the )?same (?:" + AMOUNT + "|again)|exactly the same|(?:an )?equal " + AMOUNT
                    + "|like for like|gram for gram|one for one|weight for weight|as much)\\b.*");
    private static final Pattern HALF = Pattern.compile(".*\\bhalf (?:the|that|as) (?:" + AMOUNT + "|much|many)\\b.*");
    private static final Pattern TWICE =
            Pattern.compile(".*\\b(?:twice|double) (?:the|that|as) (?:" + AMOUNT + "|much|many)\\b.*");
    private static final RationalNumber SMALLEST_WEIGHT = Rationals.of(10);
    private static final int BEHIND = 6;
    private static final int LEADS_REACH = 5;
    private static final Set<String> LEADS = Words.set(
            "instead about around use take and you want need you'd you'll it is it's just but in if like prefer at a "
                    + "pinch fine well too");

    static OfferedAmount of(Proposal proposal, IngredientLine line, Foods foods) {
        Portion use = proposal.use();
        int end = proposal.end();
        int sentence = end;
        while (sentence < end + BEHIND && sentence < foods.words.size() && !foods.words.wall(sentence)) {
            sentence++;
        }
        int from = Math.max(0, Math.min(proposal.start(), use.start()) - 4);
        String around = foods.words.normal(from, sentence);
        if (HALF.matcher(around).matches()) {
            return new OfferedAmount(line.quantity().map(written -> written.times(Rationals.of(1, 2))), false);
        }
        if (TWICE.matcher(around).matches()) {
            return new OfferedAmount(line.quantity().map(written -> written.times(Rationals.of(2))), false);
        }
        if (SAME.matcher(around).matches() && use.amount().isEmpty()) {
            return new OfferedAmount(line.quantity(), true);
        }
        Optional<SpokenQuantity> said = use.amount().or(() -> behind(end, foods));
        return new OfferedAmount(said.flatMap(amount -> quantity(amount, line)), false);
    }

    /** "use plain yoghurt instead, about two hundred and fifty". */
    private static Optional<SpokenQuantity> behind(int end, Foods foods) {
        int at = end;
        while (at < end + LEADS_REACH && LEADS.contains(foods.words.text(at))) {
            at++;
        }
        int from = at;
        return foods.amountIn(from, from + 1)
                .filter(said -> foods.at(said.start()).isEmpty())
                .filter(said -> said.manner() != SpokenQuantity.Manner.HEAT);
    }

    /** A bare number is one of the line's unit where it is large, and pieces where it is small. */
    private static Optional<Quantity> quantity(SpokenQuantity said, IngredientLine line) {
        if (said.quantity().isPresent()) {
            return said.quantity();
        }
        if (said.manner() != SpokenQuantity.Manner.BARE) {
            return Optional.empty();
        }
        Optional<Unit> unit = line.quantity()
                .map(Quantity::unit)
                .filter(written -> written.dimension() == Dimension.MASS || written.dimension() == Dimension.VOLUME);
        return unit.isPresent() && said.isAtLeast(SMALLEST_WEIGHT)
                ? unit.map(written -> new Quantity(said.amount(), written))
                : Optional.of(new Quantity(said.amount(), Unit.EACH));
    }
}
