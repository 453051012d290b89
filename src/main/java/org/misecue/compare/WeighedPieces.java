package org.misecue.compare;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/** What counted things weighed on camera: eggs are counted in the list, and other things are measured by their weight. */
final class WeighedPieces {

    private static final int WEIGHING_REACH = 45;

    private final Hearing heard;
    private final Repairs repairs;
    private final Mentions mentions;
    private final Map<Integer, Quantity> weighed = new HashMap<>();
    private int lastWeighing;

    WeighedPieces(Hearing heard, Mentions mentions) {
        this.heard = heard;
        this.repairs = new Repairs(heard);
        this.mentions = mentions;
    }

    void note(int line, Quantity quantity) {
        weighed.put(line, quantity);
    }

    Optional<Quantity> of(int line) {
        return Optional.ofNullable(weighed.get(line));
    }

    /** "four eggs … let the dial settle and that comes to two hundred and thirty". */
    boolean take(SpokenQuantity said) {
        boolean of = heard.words.text(said.end()).equals("of");
        boolean named =
                heard.namesIn(said.end(), said.end() + (of ? 4 : 1)).stream().anyMatch(NameHit::inRecipe);
        boolean heavy = said.unit().map(Unit::dimension).equals(Optional.of(Dimension.MASS))
                || (said.manner() == Manner.BARE && said.isAtLeast(Rationals.of(20)));
        if (named || !heavy || !heard.on(Mechanism.WEIGHED_PIECES)) {
            return false;
        }
        Optional<Mention> counted = mentions.last()
                .filter(last ->
                        last.quantity().dimension() == Dimension.COUNT && said.start() - last.end() <= WEIGHING_REACH)
                .filter(last -> heard.namesIn(last.end(), said.start()).stream()
                        .allMatch(name -> name.lines().contains(last.line())
                                || !heard.takesAmounts(name)
                                || heard.isPassing(name)));
        boolean cue = heard.phrases.within(Kind.WEIGHS, said.start() - 14, said.start() + 1)
                || (lastWeighing > 0
                        && said.start() - lastWeighing <= WEIGHING_REACH
                        && repairs.isRepaired(lastWeighing, said.start()));
        boolean theirs = heard.words.normal(said.start() - 5, said.start()).contains("your");
        if (counted.isEmpty() || !cue || theirs) {
            return false;
        }
        lastWeighing = said.end();
        heard.trail.note(
                said.start(), "what the " + heard.lineName(counted.get().line()) + " weighed, which are counted");
        weighed.put(counted.get().line(), said.quantity().orElse(new Quantity(said.amount(), Unit.GRAM)));
        return true;
    }

    /** Eggs that are counted in the list and weighed on camera: the weight may be what other things are measured by. */
    boolean isWeighing(Quantity quantity, int line) {
        return heard.on(Mechanism.WEIGHED_PIECES)
                && quantity.dimension() == Dimension.MASS
                && heard.lines
                        .get(line)
                        .quantity()
                        .filter(written -> written.dimension() == Dimension.COUNT)
                        .isPresent()
                && heard.lines.get(line).packing().isEmpty();
    }
}
