package org.misecue.compare;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.Aside;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.QuantityWords;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * The size of a pack is an amount when all of the pack goes in: "the whole fifteen ounce can", "a sixteen ounce jar and I
 * use the whole thing". Otherwise it only says what was bought.
 */
final class Packs {

    private static final Set<String> SOURCES = Set.of("from", "of", "off");
    private static final int WHOLE_REACH = 14;
    private static final int SHARE_REACH = 30;
    private static final int COUNT_REACH = 14;
    private static final int NAMED_REACH = 6;

    private Packs() {}

    /** The amount that a pack's size stands for; empty where it stays an aside. */
    static Optional<SpokenQuantity> amount(SpokenQuantity said, Hearing heard) {
        if (!heard.on(Mechanism.PACKS) || !said.isAside(Aside.Kind.PACK_SIZE)) {
            return Optional.empty();
        }
        return isWhole(said, heard) || isWrittenSo(said, heard)
                ? Optional.of(new SpokenQuantity(
                        said.start(), said.end() + 1, said.amount(), said.unit(), said.manner(), Optional.empty()))
                : Optional.empty();
    }

    /** "a block is two fifty … and half the block goes in": a share of the pack that was spoken of. */
    static Optional<SpokenQuantity> share(SpokenQuantity said, Hearing heard) {
        int at = said.end();
        while (at < said.end() + 2
                && (heard.words.text(at).equals("of") || heard.words.text(at).equals("the"))) {
            at++;
        }
        boolean pack = at > said.end() && QuantityWords.isPacking(heard.words.text(at));
        if (!heard.on(Mechanism.PACKS) || said.manner() != Manner.SHARE || !pack) {
            return Optional.empty();
        }
        int end = at + 1;
        return heard.packBefore(said.start())
                .filter(size -> said.start() - size.end() <= SHARE_REACH)
                .flatMap(size -> times(said, end, size, size.unit().isPresent() ? Manner.MEASURED : Manner.BARE));
    }

    /** "ten grams in a packet and I take two packets": so many times the size. */
    static Optional<SpokenQuantity> counted(SpokenQuantity said, Hearing heard) {
        boolean ofThem = said.manner() == Manner.BARE && heard.isOfThem(said.end());
        if (!heard.on(Mechanism.COUNTED_PACKS) || (said.manner() != Manner.PACKED && !ofThem)) {
            return Optional.empty();
        }
        return heard.packBefore(said.start())
                .filter(size ->
                        said.start() - size.end() <= COUNT_REACH && size.unit().isPresent())
                .filter(size -> heard.namesIn(size.end(), said.start()).stream().noneMatch(NameHit::inRecipe))
                .flatMap(size -> times(said, said.end(), size, Manner.MEASURED));
    }

    /** "two punnets, and there's a hundred and fifty grams in each punnet": what was counted first is told in weight. */
    static Optional<SpokenQuantity> told(SpokenQuantity said, Hearing heard) {
        if (!heard.on(Mechanism.COUNTED_PACKS)
                || !said.isAside(Aside.Kind.PACK_SIZE)
                || said.unit().isEmpty()
                || QuantityWords.isPacking(heard.words, said.end())
                || (amount(said, heard).isPresent() && !isSeveral(said, heard))
                || heard.phrases.within(Kind.NOT_ALL, said.end(), said.end() + WHOLE_REACH)) {
            return Optional.empty();
        }
        return countedBefore(said, heard)
                .filter(count ->
                        !isSource(count, heard) && (isNamedAgain(count, said, heard) || isInEach(count, said, heard)))
                .flatMap(count -> times(count, said.end(), said, Manner.MEASURED));
    }

    private static boolean isSeveral(SpokenQuantity said, Hearing heard) {
        return countedBefore(said, heard)
                .filter(count -> count.isAtLeast(Rationals.of(2)))
                .isPresent();
    }

    /** The packs that were counted shortly before their size. */
    private static Optional<SpokenQuantity> countedBefore(SpokenQuantity said, Hearing heard) {
        return heard.quantityBefore(said.start())
                .filter(count -> said.start() - count.end() <= COUNT_REACH && countsPacks(count, heard));
    }

    private static boolean countsPacks(SpokenQuantity count, Hearing heard) {
        return count.manner() == Manner.PACKED
                || (count.manner() == Manner.BARE && QuantityWords.isPacking(heard.words, count.end()));
    }

    /** "two pots, in each is three hundred grams". */
    private static boolean isInEach(SpokenQuantity count, SpokenQuantity said, Hearing heard) {
        return heard.words
                .normal(count.end(), said.start())
                .matches("(?:.* )?(?:in )?each (?:one |of them )?(?:is|has|holds)");
    }

    private static boolean isNamedAgain(SpokenQuantity count, SpokenQuantity said, Hearing heard) {
        int word = count.manner() == Manner.PACKED ? count.end() - 1 : count.end();
        String pack = Words.singular(heard.words.text(word));
        return IntStream.range(word + 1, said.end() + NAMED_REACH)
                .anyMatch(at -> Words.singular(heard.words.text(at)).equals(pack));
    }

    /** "these two bars, they're a hundred grams each and both of them go in". */
    static Optional<SpokenQuantity> each(SpokenQuantity said, Hearing heard) {
        int each = said.end();
        OptionalInt whole = heard.phrases.lastWithin(Kind.WHOLE_AFTER, each, each + WHOLE_REACH);
        if (!heard.on(Mechanism.COUNTED_PACKS)
                || said.manner() != Manner.MEASURED
                || !heard.words.text(each).equals("each")
                || whole.isEmpty()) {
            return Optional.empty();
        }
        return count(said, whole.getAsInt(), heard)
                .map(factor -> new SpokenQuantity(
                        said.start(),
                        each + 1,
                        said.amount().times(factor),
                        said.unit(),
                        said.manner(),
                        Optional.empty()));
    }

    /** How many packs: counted before their size, or by "both", "all three" behind it. */
    private static Optional<RationalNumber> count(SpokenQuantity said, int whole, Hearing heard) {
        Optional<RationalNumber> before =
                countedBefore(said, heard).flatMap(count -> count.amount().least());
        boolean packs = IntStream.range(said.end(), whole).anyMatch(at -> QuantityWords.isPacking(heard.words, at));
        return before.isPresent() || !packs
                ? before
                : heard.quantityFrom(whole)
                        .filter(all -> all.start() == whole + 1
                                && heard.words.text(whole).equals("all"))
                        .flatMap(all -> all.amount().least())
                        .or(() -> heard.words.text(whole).equals("both")
                                ? Optional.of(Rationals.of(2))
                                : Optional.empty());
    }

    /** "two tubs of two hundred and eighty". */
    static Optional<SpokenQuantity> ofSize(SpokenQuantity said, Hearing heard) {
        if (!heard.on(Mechanism.COUNTED_PACKS)
                || said.manner() != Manner.PACKED
                || isSource(said, heard)
                || !heard.words.text(said.end()).equals("of")) {
            return Optional.empty();
        }
        return heard.quantityFrom(said.end() + 1)
                .filter(size -> size.start() == said.end() + 1 && size.isAside(Aside.Kind.PACK_SIZE))
                .flatMap(size -> times(said, size.end(), size, size.manner()));
    }

    /** "a block of two fifty, so I cut a piece off": one pack of a size is what was bought, until an amount is said. */
    static boolean isOnlyBought(SpokenQuantity said, Hearing heard) {
        return heard.on(Mechanism.TAKEN_FROM)
                && said.manner() == Manner.PACKED
                && said.amount().least().equals(Optional.of(Rationals.ONE));
    }

    /** "out of a bag of one and a half kilos": where it comes from, whatever its size. */
    private static boolean isSource(SpokenQuantity said, Hearing heard) {
        return heard.on(Mechanism.TAKEN_FROM) && SOURCES.contains(heard.words.text(said.start() - 1));
    }

    /** So many of a size, or a share of it. */
    private static Optional<SpokenQuantity> times(SpokenQuantity said, int end, SpokenQuantity size, Manner manner) {
        return said.amount()
                .least()
                .map(factor -> new SpokenQuantity(
                        said.start(), end, size.amount().times(factor), size.unit(), manner, Optional.empty()));
    }

    private static boolean isWhole(SpokenQuantity said, Hearing heard) {
        OptionalInt whole = heard.phrases.lastWithin(Kind.WHOLE_BEFORE, said.start() - 8, said.start());
        if (whole.isPresent() && isOfPack(whole.getAsInt(), said, heard)) {
            return true;
        }
        int from = said.end() + 1;
        OptionalInt all = heard.phrases.lastWithin(Kind.WHOLE_AFTER, from, from + WHOLE_REACH);
        return all.isPresent()
                && !isDenied(all.getAsInt(), heard)
                && !heard.phrases.within(Kind.NOT_ALL, from, from + WHOLE_REACH);
    }

    /** "we don't want all of it". */
    private static boolean isDenied(int at, Hearing heard) {
        for (int before = at - 4; before < at; before++) {
            String word = heard.words.text(before);
            if (word.equals("not") || word.endsWith("n't")) {
                return true;
            }
        }
        return false;
    }

    /** "the whole four hundred gram tin", "the whole packet, so that's two fifty", not "the whole world". */
    private static boolean isOfPack(int from, SpokenQuantity said, Hearing heard) {
        if (said.start() - from <= 2) {
            return true;
        }
        for (int at = from; at < Math.min(said.start(), from + 4); at++) {
            if (QuantityWords.isPacking(heard.words, at)) {
                return true;
            }
        }
        return false;
    }

    /** "a four hundred mil tin of coconut milk", where the list has a tin of it. */
    private static boolean isWrittenSo(SpokenQuantity said, Hearing heard) {
        int after = said.end() + 1;
        if (!heard.words.text(after).equals("of")) {
            return false;
        }
        return heard.namesIn(after, after + 3).stream()
                .map(NameHit::lines)
                .flatMap(lines -> lines.stream().map(heard.lines::get))
                .map(IngredientLine::packing)
                .anyMatch(packing -> !packing.isEmpty());
    }
}
