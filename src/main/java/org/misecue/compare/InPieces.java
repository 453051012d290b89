package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/**
 * "Two hundred into the batter and fifty scattered on the top", "seventy at the first pour and then twenty at the second":
 * two amounts that come to exactly what is written, where the words tell that they go in one after the other. Looked for
 * when all has been heard, and only for a line that would differ without it.
 */
final class InPieces {

    private static final int REACH = 45;
    private static final int BESIDE = 3;
    private static final Set<String> AGAIN = Words.set("it is that no only");
    private static final int FAR = 100;
    /** What {@link Fit} makes of an amount that is far too much or too little for the line. */
    private static final double OF_ANOTHER_SIZE = -5;

    private static final int AROUND = 8;
    private static final int LEADING = 4;
    private static final Set<Kind> PARTING = Set.of(Kind.KEPT, Kind.HOLDS_BACK, Kind.FIRST_PORTION, Kind.REMAINDER);
    private static final Set<String> PARTED =
            Words.set("first second again after before top side other lot lots later over once");
    /** Between amounts that are not the same these will do. */
    private static final Set<String> FOLLOWING = Words.set("then and now");

    private final Hearing heard;
    private final Attacher attacher;
    private final Judge judge;

    InPieces(Hearing heard, Attacher attacher) {
        this.heard = heard;
        this.attacher = attacher;
        this.judge = new Judge(heard.household);
    }

    /** Adds the second piece to the first, if the line's amounts are two such. */
    void join(int line) {
        List<Mention> own = attacher.mentions().of(line);
        boolean plain = own.stream().allMatch(mention -> mention.role() != Role.ADDS && !mention.provisional());
        if (!heard.on(Mechanism.IN_PIECES) || own.isEmpty() || !plain || isRight(line)) {
            return;
        }
        Mention first = own.get(0);
        Stream<Mention> said = own.stream().skip(1);
        Stream<Mention> homeless = Stream.concat(attacher.homeless().stream(), attacher.repeats().stream())
                .flatMap(one -> asMention(one, line).stream());
        Stream.concat(said, homeless)
                .filter(second -> isNext(first, second) || isNext(second, first))
                .filter(second -> completes(line, first, second) && isParted(first, second))
                .filter(second -> !isOneThing(first.quantity()) && !isOneThing(second.quantity()))
                .filter(second -> own.stream().allMatch(mention -> isOneOf(mention, first, second)))
                .findFirst()
                .ifPresent(second -> join(second));
    }

    private void join(Mention second) {
        // What was given to nothing so far is only added.
        attacher.mentions().move(second, second.with(Role.ADDS));
        heard.trail.note(second.start(), "one of two pieces that come to what is written");
    }

    private boolean isRight(int line) {
        return attacher.mentions()
                .committed(line)
                .filter(said -> judge.of(line, said, heard) != Verdict.DIFFERS)
                .isPresent();
    }

    private Optional<Mention> asMention(SpokenQuantity said, int line) {
        return said.isAside()
                ? Optional.empty()
                : Fit.inUnits(said, heard.lines.get(line), Optional.empty())
                        .filter(quantity ->
                                Fit.of(said, heard.lines.get(line), Optional.empty(), heard) > OF_ANOTHER_SIZE)
                        .map(quantity -> Mention.foundLate(
                                line,
                                said.start(),
                                said.end(),
                                quantity,
                                said.unit().isEmpty()));
    }

    private boolean isNext(Mention first, Mention second) {
        return second.start() >= first.end()
                && second.start() - first.end() <= (isMore(second) ? FAR : REACH)
                && heard.sameSource(first.start(), second.start())
                && heard.namesIn(first.end(), second.start()).stream().allMatch(name -> isNoOther(name, first.line()));
    }

    /** "then the other hundred grams", however long the whisking takes. */
    private boolean isMore(Mention second) {
        return heard.phrases.within(Kind.ADDS, second.start() - LEADING, second.start() + 1);
    }

    private boolean isNoOther(NameHit name, int line) {
        return !name.inRecipe() || name.lines().contains(line) || heard.isPassing(name);
    }

    private boolean completes(int line, Mention first, Mention second) {
        return new Reckoner(heard.household, heard.ingredientOfLine.get(line))
                .sum(first.quantity(), second.quantity())
                .filter(sum -> !sum.amount().hedged() && judge.of(line, sum, heard) == Verdict.AGREES)
                .isPresent();
    }

    /** "one egg at a time" is no piece of four eggs. */
    static boolean isOneThing(Quantity quantity) {
        return quantity.unit() == Unit.EACH && quantity.amount().least().equals(Optional.of(Rationals.ONE));
    }

    private boolean isParted(Mention first, Mention second) {
        boolean told = isMore(second)
                || PARTING.stream()
                        .anyMatch(kind -> heard.phrases.within(kind, first.start() - LEADING, first.end() + AROUND)
                                || heard.phrases.within(kind, second.start() - AROUND, second.end() + AROUND))
                || heard.words.saysAny(PARTED, first.start() - LEADING, first.end() + AROUND)
                || heard.words.saysAny(PARTED, second.start() - AROUND, second.end() + AROUND);
        boolean alike = first.quantity().unit() == second.quantity().unit()
                && !first.quantity().equals(second.quantity());
        return told
                || isBeside(first, second)
                || (alike && heard.words.saysAny(FOLLOWING, second.start() - LEADING, second.start()));
    }

    /** "one teaspoon whole and one teaspoon crushed". */
    private boolean isBeside(Mention first, Mention second) {
        return first.quantity().unit() != Unit.EACH
                && second.start() - first.end() <= BESIDE
                && heard.words.text(second.start() - 1).equals("and")
                && !AGAIN.contains(heard.words.text(second.end()));
    }

    private static boolean isOneOf(Mention mention, Mention first, Mention second) {
        return mention.quantity().equals(first.quantity()) || mention.quantity().equals(second.quantity());
    }
}
