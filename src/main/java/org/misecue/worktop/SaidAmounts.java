package org.misecue.worktop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.narration.Narration;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.search.AmountKeys;
import org.misecue.search.SaidAmount;
import org.misecue.spoken.QuantityListener;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/** The amounts that are said in each cue of a narration, so that they can be found however they were said. */
final class SaidAmounts {

    private final Map<Integer, List<SaidAmount>> byCue = new HashMap<>();

    private SaidAmounts() {}

    static SaidAmounts in(Narration narration) {
        SaidAmounts said = new SaidAmounts();
        WordStream words = WordStream.of(List.of(narration));
        // What is an aside to a recipe may be just what an editor looks for.
        for (SpokenQuantity heard : new QuantityListener(words).allNumbers()) {
            said.add(heard, words, narration);
        }
        return said;
    }

    List<SaidAmount> ofCue(int cue) {
        return List.copyOf(byCue.getOrDefault(cue, List.of()));
    }

    private void add(SpokenQuantity heard, WordStream words, Narration narration) {
        Token first = words.at(heard.start());
        Token last = words.at(heard.end() - 1);
        int to = last.word() + 1;
        for (int cue = first.cue(); cue < last.cue(); cue++) {
            to += narration.cues().get(cue).words().size();
        }
        for (String key : keys(heard)) {
            byCue.computeIfAbsent(first.cue(), cue -> new ArrayList<>()).add(new SaidAmount(key, first.word(), to));
        }
    }

    private static Set<String> keys(SpokenQuantity heard) {
        return meant(heard)
                .flatMap(quantity -> AmountKeys.said(quantity).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Shares and percentages are no amounts. Degrees of no stated kind may be either. */
    private static Stream<Quantity> meant(SpokenQuantity heard) {
        if (heard.unit().isPresent()) {
            return heard.quantity().stream();
        }
        if (heard.manner() == Manner.HEAT) {
            return Stream.of(Unit.CELSIUS, Unit.FAHRENHEIT).map(unit -> new Quantity(heard.amount(), unit));
        }
        return heard.manner() == Manner.BARE ? Stream.of(new Quantity(heard.amount(), Unit.EACH)) : Stream.empty();
    }
}
