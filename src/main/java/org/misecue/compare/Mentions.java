package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.spoken.NameHit;

/** What was said of the lines so far, in time order. */
final class Mentions {

    private final Hearing heard;
    private final List<Mention> all = new ArrayList<>();
    /** Kept as the mentions come: what stands is asked for often, and long talk has many of them. */
    private final Map<Integer, Ledger> ledgers = new HashMap<>();

    private final Map<Integer, List<Mention>> byLine = new LinkedHashMap<>();

    Mentions(Hearing heard) {
        this.heard = heard;
    }

    void add(Mention mention) {
        all.add(mention);
        ledger(mention.line()).take(mention);
        byLine.computeIfAbsent(mention.line(), k -> new ArrayList<>()).add(mention);
    }

    /** Takes back a mention that turned out to be the total of several lines. */
    void forget(int end) {
        all.stream()
                .filter(mention -> mention.end() == end)
                .forEach(mention -> heard.trail.note(mention.start(), "the total of several things"));
        remove(mention -> mention.end() == end);
    }

    /** Puts one in place of another that turned out to be of another line. */
    void move(Mention from, Mention to) {
        remove(from::equals);
        add(to);
    }

    private void remove(Predicate<Mention> which) {
        all.removeIf(which);
        byLine.values().forEach(list -> list.removeIf(which));
        byLine.values().removeIf(List::isEmpty);
        ledgers.clear();
        all.forEach(mention -> ledger(mention.line()).take(mention));
    }

    private Ledger ledger(int line) {
        return ledgers.computeIfAbsent(line, k -> new Ledger(heard.household, heard.ingredientOfLine.get(line)));
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

    /** Whether no amount was given to any line that the name may mean. */
    boolean noneOf(NameHit name) {
        return name.lines().stream().allMatch(line -> of(line).isEmpty());
    }

    /** Whether a line that the name may mean has no amount yet. */
    boolean lacking(NameHit name) {
        return name.lines().stream().anyMatch(line -> of(line).isEmpty());
    }

    Map<Integer, List<Mention>> byLine() {
        return byLine;
    }

    /** What stands for a line so far, where the speaker is of one mind; of two measures the one that is written. */
    Optional<Quantity> committed(int line) {
        if (of(line).isEmpty()) {
            return Optional.empty();
        }
        List<Ledger.Entry> standing = ledger(line).settled();
        Ledger.Entry last = standing.get(standing.size() - 1);
        return asWritten(last, line).or(() -> Optional.of(last.quantity()));
    }

    /** One amount told in two measures, by the one that the list has. */
    private Optional<Quantity> asWritten(Ledger.Entry entry, int line) {
        boolean added = entry.mentions().stream().anyMatch(mention -> mention.role() == Mention.Role.ADDS);
        Optional<Unit> written = heard.lines.get(line).quantity().map(Quantity::unit);
        return entry.mentions().stream()
                .map(Mention::quantity)
                .filter(said -> !added && Optional.of(said.unit()).equals(written))
                .filter(said -> said.unit() != entry.quantity().unit())
                .findFirst();
    }
}
