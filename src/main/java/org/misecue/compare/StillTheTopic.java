package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/**
 * "Now the pumpkin …", a long story, "… what I've got here is a cup": an amount with its unit that no name is near belongs
 * to what was spoken of last, where nothing else was spoken of between and that has no amount yet. It is never sure.
 */
final class StillTheTopic {

    private static final int REACH = 110;

    private static final int WAITING_REACH = 20;

    private final Hearing heard;
    private final Mentions mentions;

    StillTheTopic(Hearing heard, Mentions mentions) {
        this.heard = heard;
        this.mentions = mentions;
    }

    /** The line that was spoken of last, if the amount could be its own. */
    Optional<Integer> line(SpokenQuantity said) {
        boolean measured = said.manner() == Manner.MEASURED && !said.isAside() && isFood(said);
        return measured && heard.on(Mechanism.STILL_THE_TOPIC)
                ? topic(said.start())
                        .filter(name -> name.lines().size() == 1 && heard.together(name.start(), said.start()))
                        .map(name -> name.lines().iterator().next())
                        .filter(line -> mentions.of(line).isEmpty() && isOfItsMeasure(said, line))
                : Optional.empty();
    }

    /**
     * "butter … a hundred and twenty five grams of that. Caster sugar …": whether something that was named has no amount
     * yet, so that the name behind "that" begins anew.
     */
    boolean isWaiting(SpokenQuantity said, NameHit behind) {
        boolean that = heard.words.text(said.end()).equals("of")
                && PointerGrammar.POINTING.contains(heard.words.text(said.end() + 1))
                && behind.start() == said.end() + 2;
        return that
                && topic(said.start())
                        .filter(name -> said.start() - name.end() <= WAITING_REACH
                                && !name.lines().equals(behind.lines()))
                        .filter(mentions::noneOf)
                        .isPresent();
    }

    private static boolean isFood(SpokenQuantity said) {
        return said.unit()
                .map(Unit::dimension)
                .filter(dimension -> dimension == Dimension.MASS || dimension == Dimension.VOLUME)
                .isPresent();
    }

    private boolean isOfItsMeasure(SpokenQuantity said, int line) {
        boolean same = heard.lines
                .get(line)
                .quantity()
                .map(written ->
                        Optional.of(written.dimension()).equals(said.unit().map(Unit::dimension)))
                .orElse(false);
        return same && Fit.of(said, heard.lines.get(line), Optional.empty(), heard) > 0;
    }

    /** The last thing spoken of, where it was the only one since the amount before this. */
    private Optional<NameHit> topic(int until) {
        int from = Math.max(until - REACH, mentions.last().map(Mention::end).orElse(0));
        List<NameHit> spokenOf = heard.namesIn(from, until).stream()
                .filter(name -> name.inRecipe() && heard.takesAmounts(name) && !heard.isPassing(name))
                .toList();
        return spokenOf.stream().reduce((first, second) -> second).filter(last -> spokenOf.stream()
                .allMatch(name -> name.lines().equals(last.lines())));
    }
}
