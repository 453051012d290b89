package org.misecue.worktop;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.compare.Comparison;
import org.misecue.compare.Evidence;
import org.misecue.compare.LineVerdict;
import org.misecue.compare.Unwritten;
import org.misecue.compare.Verdict;
import org.misecue.narration.Cue;
import org.misecue.narration.Moment;
import org.misecue.narration.Narration;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.IngredientLine;
import org.misecue.search.AmountKeys;
import org.misecue.search.SaidAmount;

/**
 * The amounts of ingredients as the comparison heard them, so that "caster sugar 175 g" is found where only "the same
 * again of the caster" is said.
 */
final class NamedAmounts {

    static final NamedAmounts NONE = new NamedAmounts(List.of());

    private final List<Named> all;

    private NamedAmounts(List<Named> all) {
        this.all = all;
    }

    /** @param words how many words say it */
    private record Named(Moment moment, int words, Set<String> keys, String ingredient) {}

    static NamedAmounts of(Comparison comparison) {
        List<Named> all = new ArrayList<>();
        comparison.written().forEach(verdict -> add(verdict, all));
        for (Unwritten added : comparison.unwritten()) {
            added.evidence().forEach(said -> add(said, Optional.empty(), added.ingredient(), all));
        }
        return new NamedAmounts(all);
    }

    /** Where all that was said is what is written, it is found by that too: two tablespoons, said one by one. */
    private static void add(LineVerdict verdict, List<Named> all) {
        IngredientLine line = verdict.line();
        Optional<Quantity> together = line.quantity().filter(written -> verdict.verdict() == Verdict.AGREES);
        verdict.evidence().forEach(said -> add(said, together, line.ingredient(), all));
    }

    private static void add(Evidence said, Optional<Quantity> together, String ingredient, List<Named> all) {
        if (said.via() != Evidence.Via.SPOKEN || said.quantity().isEmpty()) {
            return;
        }
        Set<String> keys = new LinkedHashSet<>();
        Stream.concat(said.quantity().stream(), together.stream())
                .forEach(quantity -> keys.addAll(AmountKeys.said(quantity)));
        int words = Math.max(1, said.deciding().strip().split("\\s+").length);
        all.add(new Named(said.moment(), words, keys, ingredient));
    }

    List<SaidAmount> in(Narration narration, Cue cue) {
        List<SaidAmount> here = new ArrayList<>();
        for (Named named : all) {
            Duration at = named.moment().at();
            if (named.moment().source().equals(narration.source())
                    && at.compareTo(cue.start()) >= 0
                    && at.compareTo(cue.end()) < 0) {
                int from = (int) cue.words().stream()
                        .filter(word -> word.at().compareTo(at) < 0)
                        .count();
                named.keys()
                        .forEach(key ->
                                here.add(new SaidAmount(key, from, from + named.words(), Set.of(named.ingredient()))));
            }
        }
        return here;
    }
}
