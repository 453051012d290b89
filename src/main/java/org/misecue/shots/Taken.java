package org.misecue.shots;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.prep.Bowl;
import org.misecue.prep.Content;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * What an action takes of one ingredient line, out of one bowl or, in additions, out of several. Viewers are told the
 * whole, because that is what is written; the tray has a bowl for each addition.
 *
 * @param additions in how many it goes in; 1 for at once
 */
record Taken(Content content, int additions) {

    /** In the order in which the ingredients are first taken. */
    static List<Taken> outOf(List<Bowl> bowls) {
        Map<Object, List<Content>> lines = bowls.stream()
                .flatMap(bowl -> bowl.contents().stream())
                .collect(Collectors.groupingBy(Content::line, LinkedHashMap::new, Collectors.toList()));
        return lines.values().stream().flatMap(Taken::gathered).toList();
    }

    private static Stream<Taken> gathered(List<Content> parts) {
        return whole(parts.stream().map(Content::weighed).toList())
                .map(all -> Stream.of(new Taken(new Content(parts.get(0).line(), all, Optional.empty()), parts.size())))
                .orElseGet(() -> parts.stream().map(part -> new Taken(part, 1)));
    }

    /** Empty where the parts do not add up to one figure. */
    private static Optional<Quantity> whole(List<Quantity> parts) {
        Quantity first = parts.get(0);
        if (parts.stream().allMatch(first::equals)) {
            return Optional.of(parts.size() == 1 ? first : first.times(Rationals.of(parts.size())));
        }
        boolean exact =
                parts.stream().allMatch(part -> part.amount() instanceof Amount.Exact && part.unit() == first.unit());
        return exact
                ? Optional.of(Quantity.of(
                        parts.stream()
                                .map(part -> part.amount().least().orElseThrow())
                                .reduce(Rationals.ZERO, RationalNumber::add),
                        first.unit()))
                : Optional.empty();
    }
}
