package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.compare.Mention.Role;
import org.misecue.pantry.Ingredient;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;

/**
 * Folds what was said of one line, in time order, into what the speaker finally commits to. An amount stated again
 * confirms, a corrected one replaces, an added one adds; two that contradict each other without a repair both stand.
 */
final class Ledger {

    private static final int RESTATED_REACH = 5;

    /** One amount that stands at the end, with the mentions that made it. */
    record Entry(Quantity quantity, List<Mention> mentions) {

        boolean isProvisional() {
            return mentions.stream().allMatch(Mention::provisional);
        }

        /** How well the best of its mentions fits the line. */
        double score() {
            return mentions.stream().mapToDouble(Mention::score).max().orElse(0);
        }

        /** With one more mention, which may change the amount. */
        Entry with(Mention mention, Quantity changed) {
            List<Mention> all = new ArrayList<>(mentions);
            all.add(mention);
            return new Entry(changed, List.copyOf(all));
        }

        /** Said twice, once plainly: the plain amount is the one that counts. */
        Entry confirmed(Mention mention) {
            boolean plainer =
                    quantity.amount().hedged() && !mention.quantity().amount().hedged();
            return with(mention, plainer ? mention.quantity() : quantity);
        }
    }

    private final Reckoner reckoner;
    private final List<Entry> standing = new ArrayList<>();
    private Optional<Quantity> takenBack = Optional.empty();

    Ledger(Household household, Optional<Ingredient> ingredient) {
        this.reckoner = new Reckoner(household, ingredient);
    }

    /** One entry when the speaker is of one mind, more when not; never empty for mentions that are not. */
    static List<Entry> fold(List<Mention> mentions, Household household, Optional<Ingredient> ingredient) {
        Ledger ledger = new Ledger(household, ingredient);
        mentions.forEach(ledger::take);
        return ledger.settled();
    }

    void take(Mention mention) {
        if (standing.isEmpty()) {
            standing.add(new Entry(mention.quantity(), List.of(mention)));
            return;
        }
        Entry last = standing.get(standing.size() - 1);
        if (isSameAgain(last, mention)) {
            replace(last, last.with(mention, last.quantity()));
            return;
        }
        Optional<Quantity> sum =
                mention.role() == Role.ADDS ? reckoner.sum(last.quantity(), mention.quantity()) : Optional.empty();
        if (sum.isPresent()) {
            replace(last, last.with(mention, sum.get()));
        } else if (!isPartAgain(mention) && !isOnlyPrescribed(mention)) {
            stand(last, mention);
        }
    }

    /** Whether the mention tells of the last amount only what is known of it. */
    private boolean isSameAgain(Entry last, Mention mention) {
        return switch (mention.role()) {
            case STATES -> false;
            case RESTATES -> true;
            case CORRECTS -> isRestated(last, mention);
            case ADDS -> completes(mention) || isRestated(last, mention);
        };
    }

    /** Lets the amount stand: instead of those before it, as one of them, or beside them. */
    private void stand(Entry last, Mention mention) {
        Optional<Entry> same = standing.stream()
                .filter(entry -> reckoner.same(entry.quantity(), mention.quantity()))
                .findFirst();
        boolean settles = !mention.provisional() && same.isEmpty() && last.isProvisional();
        Entry alone = new Entry(mention.quantity(), List.of(mention));
        if (mention.role() == Role.CORRECTS || settles) {
            noteOld(mention);
            standing.clear();
            standing.add(
                    same.map(entry -> entry.with(mention, mention.quantity())).orElse(alone));
        } else if (same.isPresent()) {
            replace(same.get(), same.get().confirmed(mention));
            dropUnsettled(mention);
        } else {
            standing.add(alone);
        }
    }

    /** "three eggs or four? – three": what was only asked or ought to be falls when one of it is said outright. */
    private void dropUnsettled(Mention mention) {
        if (!mention.provisional()) {
            standing.removeIf(Entry::isProvisional);
        }
    }

    /** "there's another half a cup to go in, I stopped at two": a part of the sum named again is nothing new. */
    private boolean isPartAgain(Mention mention) {
        return mention.assumedUnit()
                && mention.role() == Role.STATES
                && standing.stream()
                        .filter(entry -> entry.mentions().stream().anyMatch(part -> part.role() == Role.ADDS))
                        .flatMap(entry -> entry.mentions().stream())
                        .anyMatch(part -> part.quantity().equals(mention.quantity()));
    }

    /** "I've put fifty, the recipe says forty": what ought to be takes nothing back from what was done. */
    private boolean isOnlyPrescribed(Mention mention) {
        return mention.provisional()
                && mention.role() == Role.STATES
                && standing.stream()
                        .noneMatch(
                                entry -> entry.isProvisional() || reckoner.same(entry.quantity(), mention.quantity()));
    }

    /** "it's wanting another spoonful, so that's another tablespoon": the same addition in other words. */
    private boolean isRestated(Entry last, Mention mention) {
        Mention before = last.mentions().get(last.mentions().size() - 1);
        return before.role() == Role.ADDS
                && mention.start() - before.end() <= RESTATED_REACH
                && reckoner.same(before.quantity(), mention.quantity());
    }

    /** "…it's a whole teaspoon, so here's the other half": what completes a corrected amount adds nothing to it. */
    private boolean completes(Mention mention) {
        Stream<Quantity> contradicted =
                standing.subList(0, standing.size() - 1).stream().map(Entry::quantity);
        return Stream.concat(takenBack.stream(), contradicted)
                .flatMap(old -> reckoner.sum(old, mention.quantity()).stream())
                .anyMatch(total -> standing.stream().anyMatch(entry -> reckoner.same(entry.quantity(), total)));
    }

    private void noteOld(Mention by) {
        standing.stream()
                .map(Entry::quantity)
                .filter(old -> !reckoner.same(old, by.quantity()))
                .forEach(old -> takenBack = Optional.of(old));
    }

    /** The amounts that are meant, of those that stand. */
    List<Entry> settled() {
        return new Settling(List.copyOf(standing), reckoner).settled();
    }

    private void replace(Entry old, Entry by) {
        standing.set(standing.indexOf(old), by);
    }
}
