package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.compare.Bases.Base;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * Turns a pointer into an amount: finds the amount that it points at and the ingredient that gets it. A share of what was
 * just weighed that goes to nothing else is only a portion of it and no amount.
 */
final class Pointing {

    private static final int ONE_REACH = 30;
    private static final int TARGET_REACH = 30;
    private static final int NAMED_BASE_REACH = 45;
    private static final int SHARE_TARGET_REACH = 18;
    private static final int SAID_OUTRIGHT = 9;
    private static final int THOUGHT_REACH = 7;

    /** "five hundred grams of flour in this bread all told". */
    private static final int TOLD_BEHIND = 8;

    private static final Set<String> LINKS = Words.set(
            "so that is which it our again only the a we you your have say yes be need want just for me shouldn't isn't weight "
                    + "makes comes to another um uh er works out at of it's you've i've got about there's there roughly for yolk");

    private final Hearing heard;
    private final PointerGrammar grammar;
    private final Attacher attacher;
    private final Bases bases;

    Pointing(Hearing heard, Attacher attacher) {
        this.heard = heard;
        this.grammar = new PointerGrammar(heard);
        this.attacher = attacher;
        this.bases = new Bases(heard, attacher);
    }

    /** Takes what is said at the index if it points; gives the index behind it. */
    Optional<Integer> take(int at) {
        if (!heard.on(Mechanism.BACK_REFERENCES)) {
            return Optional.empty();
        }
        return grammar.at(at).filter(pointer -> !isOnlyThought(pointer.start())).map(pointer -> {
            resolve(pointer);
            return pointer.end();
        });
    }

    /** "you'd think it'd be the same again": it is not. */
    private boolean isOnlyThought(int start) {
        return heard.words
                .normal(start - THOUGHT_REACH, start)
                .matches(".*you(?:'d| would| might) (?:think|expect)\\b.*");
    }

    /** "sixty percent of that's plain flour", "a third of that amount of cream"; portions are left alone. */
    void takeShare(SpokenQuantity said) {
        boolean percent = said.manner() == Manner.PERCENT;
        if (!heard.on(percent ? Mechanism.PERCENTAGES : Mechanism.SHARES)) {
            return;
        }
        grammar.of(said).ifPresent(pointer -> {
            boolean ofTotal = percent && pointer.base().isEmpty();
            if (ofTotal) {
                bases.shareOut(pointer);
            }
            if (!ofTotal || isSharedOut(pointer)) {
                resolve(pointer);
            }
        });
    }

    /** Notes an amount that is the total of several things: "the flours come to two hundred grams". */
    boolean isTotal(SpokenQuantity said) {
        if (!heard.on(Mechanism.TOTALS)) {
            return false;
        }
        boolean before = heard.phrases.within(Kind.TOTAL_BEFORE, said.start() - 4, said.start());
        boolean behind = heard.phrases.within(Kind.TOTAL_AFTER, said.end(), said.end() + TOLD_BEHIND);
        if (!before && !behind) {
            return bases.isTotalAgain(said);
        }
        List<NameHit> named = heard.namesIn(said.start() - 4, said.end() + 4);
        Optional<NameHit> ofSeveral =
                named.stream().filter(name -> isOfSeveral(name, said)).findFirst();
        said.quantity()
                .ifPresent(quantity -> bases.total(new Base(
                        said.end(), quantity, ofSeveral.map(NameHit::lines).orElse(Set.of()))));
        boolean isNothingElse =
                ofSeveral.isPresent() || (before && named.stream().noneMatch(NameHit::inRecipe) && !isOfOne(said));
        if (isNothingElse) {
            heard.trail.note(said.start(), "the total of several things");
        }
        return isNothingElse;
    }

    /** "the treacle … and that's come to two hundred": one thing was named since the last amount, and has none yet. */
    private boolean isOfOne(SpokenQuantity said) {
        int from = attacher.mentions().last().map(Mention::end).orElse(0);
        List<NameHit> named = heard.namesIn(Math.max(from, said.start() - ONE_REACH), said.start()).stream()
                .filter(name -> name.inRecipe() && !heard.isPassing(name))
                .toList();
        return !named.isEmpty()
                && named.stream()
                        .allMatch(name -> name.lines().equals(named.get(0).lines()))
                && attacher.mentions().noneOf(named.get(0));
    }

    /** "the flours", and not less than one of them: "three tablespoons of water in the end" is not all water of two parts. */
    private boolean isOfSeveral(NameHit name, SpokenQuantity said) {
        return name.lines().size() > 1
                && name.lines().stream()
                        .flatMap(line -> heard.lines.get(line).quantity().stream())
                        .noneMatch(written -> said.quantity()
                                .filter(total -> total.dimension() == written.dimension()
                                        && base(total).compareTo(base(written)) < 0)
                                .isPresent());
    }

    private RationalNumber base(Quantity quantity) {
        return quantity.leastInBase(heard.household).orElse(Rationals.ZERO);
    }

    /** A percentage that names no base is one only where something was shared out before: else it is the chocolate's. */
    private boolean isSharedOut(Pointer pointer) {
        return bases.isSharedOut(pointer) && (pointer.target().isPresent() || pointer.end() > pointer.start() + 2);
    }

    private void resolve(Pointer pointer) {
        heard.trail.met(pointer);
        Optional<Base> base = bases.of(pointer);
        if (isSaidOutright(pointer, base)) {
            heard.trail.note(pointer.start(), "points at an amount that is then said outright");
            return;
        }
        if (base.isEmpty()) {
            heard.trail.note(pointer.start(), "points at nothing that was measured");
            return;
        }
        base.filter(bases::isTotal).ifPresent(whole -> attacher.mentions().forget(whole.end()));
        Optional<NameHit> target = pointer.target()
                .or(() -> topic(pointer, base.get().lines(), base.get().end()));
        String pointed = Telling.pointed(
                pointer.factor(), base.get().quantity(), base.get().lines(), heard);
        heard.trail.note(
                pointer.start(), target.isPresent() ? pointed : pointed + ", a portion of it and no new amount");
        SpokenQuantity amount = amount(pointer, base.get().quantity());
        if (isForViewers(base.get())) {
            heard.pointedAtViewers.add(amount.start());
        }
        target.ifPresentOrElse(
                name -> attacher.attachTo(amount, name, base.get().lines()), () -> attacher.repeat(amount));
    }

    /** "a hundred here, so two hundred in yours … and the sugar is the same weight as your butter". */
    private boolean isForViewers(Base base) {
        return base.lines().stream()
                .flatMap(line -> attacher.mentions().last(line).stream())
                .anyMatch(told -> told.quantity().equals(base.quantity()) && Whose.of(told, heard) == Whose.VIEWERS);
    }

    private static SpokenQuantity amount(Pointer pointer, Quantity base) {
        Amount amount = base.amount().times(pointer.factor());
        return new SpokenQuantity(
                pointer.start(), pointer.end(), amount, Optional.of(base.unit()), Manner.MEASURED, Optional.empty());
    }

    /** "two thirds of that, so a hundred": then what is said counts. */
    private boolean isSaidOutright(Pointer pointer, Optional<Base> base) {
        Optional<SpokenQuantity> next = heard.quantityFrom(pointer.end());
        if (next.isEmpty()
                || next.get().isAside()
                || next.get().start() - pointer.end() > SAID_OUTRIGHT
                || next.get().manner() == Manner.SHARE
                || next.get().manner() == Manner.PERCENT) {
            return false;
        }
        boolean otherNamed = !onlyLinks(pointer.end(), next.get().start());
        boolean ahead = heard.namesIn(next.get().end(), next.get().end() + 3).stream()
                .anyMatch(name -> pointer.target()
                        .filter(target -> target.lines().equals(name.lines()))
                        .isEmpty());
        boolean setting = next.get().manner() == Manner.HEAT;
        return !otherNamed && !ahead && !setting && isOfItsSize(next.get(), pointer, base);
    }

    /** "the same again, so the two of them match" says no amount. */
    private static boolean isOfItsSize(SpokenQuantity next, Pointer pointer, Optional<Base> base) {
        if (next.manner() != Manner.BARE || base.isEmpty()) {
            return true;
        }
        double expected = base.get()
                .quantity()
                .amount()
                .times(pointer.factor())
                .least()
                .map(RationalNumber::doubleValue)
                .orElse(0.0);
        double said = next.amount().least().map(RationalNumber::doubleValue).orElse(0.0);
        return expected > 0 && said > 0 && Math.max(expected / said, said / expected) <= 3;
    }

    private boolean onlyLinks(int from, int to) {
        for (int at = from; at < to; at++) {
            if (!LINKS.contains(heard.words.text(at))) {
                return false;
            }
        }
        return true;
    }

    /** What is spoken of when the pointer is said, if that is something else than what it points at. */
    private Optional<NameHit> topic(Pointer pointer, Set<Integer> baseLines, int baseEnd) {
        int reach = pointer.share() ? SHARE_TARGET_REACH : pointer.base().isPresent() ? NAMED_BASE_REACH : TARGET_REACH;
        boolean ofPack = bases.pack(pointer).isPresent();
        int from = pointer.base().isPresent() || ofPack
                ? pointer.start() - reach
                : Math.max(baseEnd, pointer.start() - reach);
        List<NameHit> before = heard.namesIn(Math.max(0, from), pointer.start()).stream()
                .filter(name -> name.inRecipe() && !heard.isPassing(name))
                .filter(name -> !baseLines.containsAll(name.lines()))
                .toList();
        // "Mascarpone, that goes in with the cream, and it's the same weight as the honey."
        return before.stream()
                .filter(attacher.mentions()::lacking)
                .max(Comparator.comparingInt(NameHit::start))
                .or(() -> before.stream().max(Comparator.comparingInt(NameHit::start)));
    }
}
