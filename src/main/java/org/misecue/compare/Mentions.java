package org.misecue.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;

/** What was said of the lines so far, in time order. */
final class Mentions {

    private final Hearing heard;
    private final List<Mention> all = new ArrayList<>();
    private final Map<Integer, List<Mention>> byLine = new LinkedHashMap<>();

    Mentions(Hearing heard) {
        this.heard = heard;
    }

    void add(Mention mention) {
        all.add(mention);
        byLine.computeIfAbsent(mention.line(), k -> new ArrayList<>()).add(mention);
    }

    /** Takes back a mention that turned out to be the total of several lines. */
    void forget(int end) {
        all.stream()
                .filter(mention -> mention.end() == end)
                .forEach(mention -> heard.trail.note(mention.start(), "the total of several things"));
        all.removeIf(mention -> mention.end() == end);
        byLine.values().forEach(list -> list.removeIf(mention -> mention.end() == end));
        byLine.values().removeIf(List::isEmpty);
    }

    Optional<Mention> last() {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    Optional<Mention> lastMeasured() {
        for (int at = all.size() - 1; at >= 0; at--) {
            if (all.get(at).quantity().dimension() != Dimension.COUNT) {
                return Optional.of(all.get(at));
            }
        }
        return Optional.empty();
    }

    Optional<Mention> last(int line) {
        List<Mention> own = of(line);
        return own.isEmpty() ? Optional.empty() : Optional.of(own.get(own.size() - 1));
    }

    List<Mention> of(int line) {
        return byLine.getOrDefault(line, List.of());
    }

    Map<Integer, List<Mention>> byLine() {
        return byLine;
    }

    /** What stands for a line so far, where the speaker is of one mind; of two measures the one that is written. */
    Optional<Quantity> committed(int line) {
        List<Mention> own = of(line);
        if (own.isEmpty()) {
            return Optional.empty();
        }
        List<Ledger.Entry> standing = Ledger.fold(own, heard.household, heard.ingredientOfLine.get(line));
        Ledger.Entry last = standing.get(standing.size() - 1);
        boolean added = last.mentions().stream().anyMatch(mention -> mention.role() == Mention.Role.ADDS);
        return last.mentions().stream()
                .filter(mention -> !added)
                .map(Mention::quantity)
                .filter(said -> heard.lines
                        .get(line)
                        .quantity()
                        .filter(written -> written.unit() == said.unit())
                        .isPresent())
                .findFirst()
                .or(() -> Optional.of(last.quantity()));
    }
}
