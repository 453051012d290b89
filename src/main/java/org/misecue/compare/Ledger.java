package org.misecue.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.compare.Mention.Role;
import org.misecue.pantry.Ingredient;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Folds what was said of one line, in time order, into what the speaker finally commits to. An amount stated again
 * confirms, a corrected one replaces, an added one adds; two that contradict each other without a repair both stand.
 */
final class Ledger {

    private static final RationalNumber SAME = Rationals.of(2, 100);

    /** A doubtful second amount does not contradict a sure first one. */
    private static final double DOUBTFUL_BY = 2.5;

    private static final int RESTATED_REACH = 5;
    private static final int ONE_BREATH = 45;

    /** Parts that are more than the whole by this are not its parts. */
    private static final double BEYOND = 1.15;

    private static final double NEAR_IN_SIZE = 1.6;

    /** One amount that stands at the end, with the mentions that made it. */
    record Entry(Quantity quantity, List<Mention> mentions) {

        boolean isProvisional() {
            return mentions.stream().allMatch(Mention::provisional);
        }
    }

    private final Household household;
    private final Optional<Ingredient> ingredient;
    private final List<Entry> standing = new ArrayList<>();
    private Optional<Quantity> takenBack = Optional.empty();

    Ledger(Household household, Optional<Ingredient> ingredient) {
        this.household = household;
        this.ingredient = ingredient;
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
        if (mention.role() == Role.CORRECTS && isRestated(last, mention)) {
            replace(last, new Entry(last.quantity(), plus(last.mentions(), mention)));
            return;
        }
        if (mention.role() == Role.ADDS) {
            if (completes(mention) || isRestated(last, mention)) {
                replace(last, new Entry(last.quantity(), plus(last.mentions(), mention)));
                return;
            }
            Optional<Quantity> sum = sum(last.quantity(), mention.quantity());
            if (sum.isPresent()) {
                replace(last, new Entry(sum.get(), plus(last.mentions(), mention)));
                return;
            }
        }
        Optional<Entry> same = standing.stream()
                .filter(entry -> same(entry.quantity(), mention.quantity()))
                .findFirst();
        if (mention.role() == Role.RESTATES) {
            replace(last, new Entry(last.quantity(), plus(last.mentions(), mention)));
            return;
        }
        if (isPartAgain(mention) || isOnlyPrescribed(mention)) {
            return;
        }
        boolean settles = !mention.provisional() && same.isEmpty() && last.isProvisional();
        if (mention.role() == Role.CORRECTS || settles) {
            addOld(mention);
            standing.clear();
            standing.add(new Entry(
                    mention.quantity(),
                    same.map(entry -> plus(entry.mentions(), mention)).orElse(List.of(mention))));
        } else if (same.isPresent()) {
            replace(same.get(), confirmed(same.get(), mention));
        } else {
            standing.add(new Entry(mention.quantity(), List.of(mention)));
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
                        .noneMatch(entry -> entry.isProvisional() || same(entry.quantity(), mention.quantity()));
    }

    /** "it's wanting another spoonful, so that's another tablespoon": the same addition in other words. */
    private boolean isRestated(Entry last, Mention mention) {
        Mention before = last.mentions().get(last.mentions().size() - 1);
        return before.role() == Role.ADDS
                && mention.start() - before.end() <= RESTATED_REACH
                && same(before.quantity(), mention.quantity());
    }

    /** "…it's a whole teaspoon, so here's the other half": what completes a corrected amount adds nothing to it. */
    private boolean completes(Mention mention) {
        return takenBack
                .flatMap(old -> sum(old, mention.quantity()))
                .filter(total -> standing.stream().anyMatch(entry -> same(entry.quantity(), total)))
                .isPresent();
    }

    private void addOld(Mention by) {
        standing.stream()
                .map(Entry::quantity)
                .filter(old -> !same(old, by.quantity()))
                .forEach(old -> takenBack = Optional.of(old));
    }

    /** Said twice, once plainly: the plain amount is the one that counts. */
    private static Entry confirmed(Entry entry, Mention mention) {
        boolean plainer = entry.quantity().amount().hedged()
                && !mention.quantity().amount().hedged();
        return new Entry(plainer ? mention.quantity() : entry.quantity(), plus(entry.mentions(), mention));
    }

    /** A doubtful stray of another size is left out; one of nearly the same size may be the slip that is looked for. */
    List<Entry> settled() {
        Entry surest =
                standing.stream().max(Comparator.comparingDouble(Ledger::score)).orElseThrow();
        List<Entry> whole = asTotal();
        if (!whole.isEmpty()) {
            return whole;
        }
        Entry last = standing.get(standing.size() - 1);
        if (isSettledOn(last)) {
            return List.of(last);
        }
        return standing.stream()
                .filter(entry -> score(entry) >= score(surest) - DOUBTFUL_BY || nearInSize(entry, surest))
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
        boolean lastWord = standing.stream()
                .filter(entry -> entry != last)
                .flatMap(entry -> entry.mentions().stream())
                .allMatch(mention -> mention.start() < own.get(0).start());
        return lastWord && own.get(1).start() - first <= ONE_BREATH;
    }

    /** "two hundred altogether, a hundred now and a hundred later": one amount, and its parts. */
    private List<Entry> asTotal() {
        if (standing.size() < 2) {
            return List.of();
        }
        // The whole comes first: an amount said twice and another of double its size contradict each other.
        Entry whole = standing.get(0);
        Optional<Quantity> parts = Optional.empty();
        for (Entry part : standing.subList(1, standing.size())) {
            for (Mention mention : part.mentions()) {
                parts = parts.isEmpty() ? Optional.of(mention.quantity()) : sum(parts.get(), mention.quantity());
                if (parts.isEmpty() || isBeyond(parts.get(), whole.quantity())) {
                    return List.of();
                }
            }
        }
        return parts.filter(total ->
                        whole.quantity().unit().system() == total.unit().system())
                .filter(total -> same(whole.quantity(), total))
                .map(total -> List.of(new Entry(whole.quantity(), mentionsOfAll())))
                .orElse(List.of());
    }

    private boolean isBeyond(Quantity parts, Quantity whole) {
        return parts.dimension() == whole.dimension() && base(parts) > BEYOND * base(whole);
    }

    private List<Mention> mentionsOfAll() {
        return standing.stream().flatMap(entry -> entry.mentions().stream()).toList();
    }

    private boolean nearInSize(Entry one, Entry other) {
        double a = base(one.quantity());
        double b = base(other.quantity());
        return one.quantity().dimension() == other.quantity().dimension()
                && a > 0
                && b > 0
                && Math.max(a / b, b / a) <= NEAR_IN_SIZE;
    }

    private double base(Quantity quantity) {
        return quantity.leastInBase(household).map(RationalNumber::doubleValue).orElse(0.0);
    }

    private static double score(Entry entry) {
        return entry.mentions().stream().mapToDouble(Mention::score).max().orElse(0);
    }

    private void replace(Entry old, Entry by) {
        standing.set(standing.indexOf(old), by);
    }

    private static List<Mention> plus(List<Mention> mentions, Mention mention) {
        List<Mention> all = new ArrayList<>(mentions);
        all.add(mention);
        return List.copyOf(all);
    }

    private boolean same(Quantity one, Quantity other) {
        if (one.dimension() != other.dimension()
                || one.unit().system() != other.unit().system()) {
            return new Judge(household).of(one, other, ingredient) != Verdict.DIFFERS;
        }
        Optional<RationalNumber> a = one.leastInBase(household);
        Optional<RationalNumber> b = other.leastInBase(household);
        if (a.isEmpty() || b.isEmpty()) {
            return a.equals(b);
        }
        RationalNumber gap = a.get().subtract(b.get()).abs();
        return gap.compareTo(a.get().abs().multiply(SAME)) <= 0
                && one.mostInBase(household).isPresent()
                        == other.mostInBase(household).isPresent();
    }

    /** The sum in the first one's unit; empty where the dimensions differ. */
    Optional<Quantity> sum(Quantity one, Quantity other) {
        if (one.dimension() != other.dimension()) {
            return Optional.empty();
        }
        Quantity converted = other.in(one.unit(), household);
        Optional<RationalNumber> least =
                add(one.amount().least(), converted.amount().least());
        Optional<RationalNumber> most =
                add(one.amount().most(), converted.amount().most());
        if (least.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        Amount total = Amount.between(least.get(), most.get());
        boolean hedged = one.amount().hedged() || converted.amount().hedged();
        return Optional.of(new Quantity(hedged ? new Amount.Approximate(total, "in parts") : total, one.unit()));
    }

    private static Optional<RationalNumber> add(Optional<RationalNumber> one, Optional<RationalNumber> other) {
        return one.flatMap(a -> other.map(a::add));
    }
}
