package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.compare.Ledger.Entry;
import org.misecue.quantity.Quantity;

/** Which of the amounts that stand for a line at the end are meant. */
final class Settling {

    /** A doubtful second amount does not contradict a sure first one. */
    private static final double DOUBTFUL_BY = 2.5;

    private static final int ONE_BREATH = 45;

    private final List<Entry> standing;
    private final Reckoner reckoner;

    /** @param standing at least one */
    Settling(List<Entry> standing, Reckoner reckoner) {
        this.standing = standing;
        this.reckoner = reckoner;
    }

    /** A doubtful stray of another size is left out; one of nearly the same size may be the slip that is looked for. */
    List<Entry> settled() {
        Optional<Entry> whole = asTotal();
        if (whole.isPresent()) {
            return List.of(whole.get());
        }
        Entry last = standing.get(standing.size() - 1);
        if (isSettledOn(last)) {
            return List.of(last);
        }
        Entry surest =
                standing.stream().max(Comparator.comparingDouble(Entry::score)).orElseThrow();
        return standing.stream()
                .filter(entry -> entry.score() >= surest.score() - DOUBTFUL_BY
                        || reckoner.nearInSize(entry.quantity(), surest.quantity()))
                .toList();
    }

    /** Two voices, or one in doubt, that end on the same figure twice within a breath have settled on it. */
    private boolean isSettledOn(Entry last) {
        List<Mention> own = last.mentions();
        if (standing.size() < 2 || own.size() < 2) {
            return false;
        }
        int first = standing.stream()
                .flatMap(entry -> entry.mentions().stream())
                .mapToInt(Mention::start)
                .min()
                .orElse(0);
        boolean lastWord = standing.subList(0, standing.size() - 1).stream()
                .flatMap(entry -> entry.mentions().stream())
                .allMatch(mention -> mention.start() < own.get(0).start());
        return lastWord && own.get(1).start() - first <= ONE_BREATH;
    }

    /** "two hundred altogether, a hundred now and a hundred later": one amount, and its parts. */
    private Optional<Entry> asTotal() {
        if (standing.size() < 2) {
            return Optional.empty();
        }
        // The whole comes first: an amount said twice and another of double its size contradict each other.
        Entry whole = standing.get(0);
        return sumOfParts(whole.quantity())
                .filter(total ->
                        whole.quantity().unit().system() == total.unit().system())
                .filter(total -> reckoner.same(whole.quantity(), total))
                .map(total -> new Entry(whole.quantity(), mentionsOfAll()));
    }

    /** What all that stands behind the whole comes to; empty where it can't be its parts. */
    private Optional<Quantity> sumOfParts(Quantity whole) {
        Optional<Quantity> parts = Optional.empty();
        for (Entry part : standing.subList(1, standing.size())) {
            for (Mention mention : part.mentions()) {
                parts = parts.isEmpty()
                        ? Optional.of(mention.quantity())
                        : reckoner.sum(parts.get(), mention.quantity());
                if (parts.isEmpty() || reckoner.isBeyond(parts.get(), whole)) {
                    return Optional.empty();
                }
            }
        }
        return parts;
    }

    private List<Mention> mentionsOfAll() {
        return standing.stream().flatMap(entry -> entry.mentions().stream()).toList();
    }
}
