package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.NameHit;
import tech.units.indriya.function.RationalNumber;

/**
 * When all has been heard, looks once more for the lines that got nothing: a weight just as it is written, said near the
 * name, is hardly there by chance. It may have found no ingredient, or another one that has its own amount and to which
 * it does not fit. What is found so is never sure.
 */
final class SecondLook {

    private static final int NEAR = 30;
    /** "Its" sounds like "it is". */
    private static final Set<String> OWNED =
            Set.of("had its", "has its", "had it is", "has it is", "got it is", "had their");

    /** Small numbers are everywhere. */
    private static final RationalNumber TELLING = Rationals.of(20);

    private final Hearing heard;
    private final Attacher attacher;
    private final Judge judge;
    private final InPieces pieces;

    SecondLook(Hearing heard, Attacher attacher) {
        this.heard = heard;
        this.attacher = attacher;
        this.judge = new Judge(heard.household);
        this.pieces = new InPieces(heard, attacher);
    }

    void look() {
        for (int line = 0; line < heard.lines.size(); line++) {
            IngredientLine written = heard.lines.get(line);
            if (written.quantity().isPresent() && isSilent(line)) {
                elsewhere(line).forEach(this::move);
                if (isSilent(line)) {
                    misplaced(line).forEach(this::move);
                }
                if (isSilent(line)) {
                    homeless(line).ifPresent(attacher.mentions()::add);
                }
            }
            if (written.quantity().isPresent()) {
                pieces.join(line);
            }
        }
    }

    private boolean isSilent(int line) {
        List<Mention> own = attacher.mentions().of(line);
        return new SlipOfTongue(heard.lines.get(line), heard.household)
                        .likely(own)
                        .isEmpty()
                && own.stream().allMatch(Mention::assumedUnit);
    }

    private record Move(Mention from, Mention to) {}

    private void move(Move move) {
        attacher.mentions().move(move.from(), move.to());
        heard.trail.note(move.from().start(), "taken for what is written of it, as the other has its own amount");
    }

    /** What was given to another line and is far too much or too little for it, and just right for this one. */
    private List<Move> misplaced(int line) {
        return IntStream.range(0, heard.lines.size())
                .filter(other ->
                        other != line && heard.lines.get(other).quantity().isPresent())
                .boxed()
                .flatMap(other -> unlikely(other).stream())
                .filter(mention -> !mention.assumedUnit())
                .filter(mention -> judge.of(line, mention.quantity(), heard) != Verdict.DIFFERS
                        && isNear(line, mention.start(), mention.end())
                        && !isOfAnother(line, mention.end()))
                .map(mention -> new Move(
                        mention, Mention.foundLate(line, mention.start(), mention.end(), mention.quantity(), false)))
                .toList();
    }

    private List<Mention> unlikely(int line) {
        List<Mention> own = attacher.mentions().of(line);
        List<Mention> likely = new SlipOfTongue(heard.lines.get(line), heard.household).likely(own);
        return own.stream().filter(mention -> !likely.contains(mention)).toList();
    }

    /** What was given to other lines that agree without it. */
    private List<Move> elsewhere(int line) {
        return IntStream.range(0, heard.lines.size())
                .filter(other -> other != line)
                .boxed()
                .flatMap(other -> foreign(other).stream())
                .flatMap(mention -> moved(mention, line).stream())
                .toList();
    }

    private List<Mention> foreign(int line) {
        List<Mention> own = attacher.mentions().of(line);
        return own.stream()
                        .anyMatch(mention ->
                                !mention.provisional() && judge.of(line, mention.quantity(), heard) == Verdict.AGREES)
                ? own.stream()
                        .filter(mention -> isTelling(mention.quantity())
                                && judge.of(line, mention.quantity(), heard) == Verdict.DIFFERS)
                        .toList()
                : List.of();
    }

    private Optional<Move> moved(Mention mention, int line) {
        Quantity written = heard.lines.get(line).quantity().orElseThrow();
        Quantity said =
                mention.assumedUnit() ? new Quantity(mention.quantity().amount(), written.unit()) : mention.quantity();
        return judge.of(line, said, heard) == Verdict.AGREES
                        && isNear(line, mention.start(), mention.end())
                        && !isOfAnother(line, mention.end())
                        && !isOwned(mention.start())
                ? Optional.of(new Move(
                        mention, Mention.foundLate(line, mention.start(), mention.end(), said, mention.assumedUnit())))
                : Optional.empty();
    }

    private Optional<Mention> homeless(int line) {
        IngredientLine written = heard.lines.get(line);
        return attacher.homeless().stream()
                .filter(said -> isNear(line, said.start(), said.end())
                        && !isOfAnother(line, said.end())
                        && !isOwned(said.start()))
                .flatMap(said -> Fit.inUnits(said, written, Optional.empty()).stream()
                        .filter(SecondLook::isTelling)
                        .filter(quantity -> judge.of(line, quantity, heard) != Verdict.DIFFERS)
                        .map(quantity -> Mention.foundLate(
                                line,
                                said.start(),
                                said.end(),
                                quantity,
                                said.unit().isEmpty())))
                .findFirst();
    }

    private static boolean isTelling(Quantity said) {
        return (said.dimension() == Dimension.MASS || said.dimension() == Dimension.VOLUME)
                && said.amount()
                        .least()
                        .filter(number -> number.compareTo(TELLING) >= 0)
                        .isPresent();
    }

    /** "sixty grams of yolk" is not of the butter that was spoken of before. */
    private boolean isOfAnother(int line, int end) {
        List<NameHit> behind = heard.words.text(end).equals("of") ? heard.namesIn(end + 1, end + 3) : List.of();
        return behind.stream().anyMatch(name -> name.inRecipe() && !name.lines().contains(line));
    }

    /** "that one's had its twenty" is time. */
    private boolean isOwned(int start) {
        return OWNED.stream().anyMatch(heard.words.normal(start - 3, start)::endsWith);
    }

    private boolean isNear(int line, int start, int end) {
        return heard.namesIn(start - NEAR - 5, end + NEAR + 1).stream()
                .anyMatch(name -> name.lines().contains(line)
                        && heard.sameSource(start, name.start())
                        && start - name.end() <= NEAR);
    }
}
