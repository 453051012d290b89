package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Use;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/**
 * Divides one ingredient line among the steps that use it. Stated shares are taken first, in order; whoever states none
 * gets what remains. Where several steps state none, nobody can know: one bowl serves them all, and a note says so. The
 * shares of a line always add up to the whole line.
 */
final class ShareOut {

    /** A use of the line, with the number of the step and of the additions that it is made in. */
    record StepUse(int step, Use use, int additions) {}

    private final WeighedLine line;
    private final Quantity weighed;
    private final Weights weights;
    private final Place place;
    private final List<Note> notes;
    private final RationalNumber gram;
    private RationalNumber left = Rationals.ONE;

    private ShareOut(WeighedLine line, Quantity weighed, Weights weights, Source source, List<Note> notes) {
        this.line = line;
        this.weighed = weighed;
        this.weights = weights;
        this.place = Place.of(source.file(), line.written().line());
        this.notes = notes;
        this.gram = source.scaleStep();
    }

    /** Where the line stands, and the smallest step in grams that the scale shows. */
    record Source(String file, RationalNumber scaleStep) {}

    static List<Share> among(
            WeighedLine line, Quantity weighed, List<StepUse> uses, Weights weights, Source source, List<Note> notes) {
        ShareOut shareOut = new ShareOut(line, weighed, weights, source, notes);
        return shareOut.among(uses).stream()
                .flatMap(share -> shareOut.inAdditions(share, uses).stream())
                .toList();
    }

    /** A bowl for each addition; of pieces only whole ones are parted. */
    private List<Share> inAdditions(Share share, List<StepUse> uses) {
        int parts = share.steps().size() != 1
                ? 1
                : uses.stream()
                        .filter(use -> use.step() == share.steps().get(0))
                        .mapToInt(StepUse::additions)
                        .max()
                        .orElse(1);
        boolean pieces = weighed.unit() == Unit.EACH;
        List<Share> out = new ArrayList<>();
        RationalNumber open = share.fraction();
        for (int at = 1; at <= parts; at++) {
            RationalNumber even = open.divide(Rationals.of(parts - at + 1L));
            RationalNumber next = at == parts ? open : pieces ? nearest(even, Rationals.ONE) : weighable(even);
            open = open.subtract(next);
            out.add(share.addition(next, at, parts));
        }
        boolean apart = out.stream().allMatch(part -> part.fraction().signum() > 0 && (!pieces || isWhole(part)));
        return apart ? out : List.of(share);
    }

    private boolean isWhole(Share share) {
        return weighed.amount()
                .least()
                .map(amount -> amount.multiply(share.fraction()))
                .filter(amount -> Rationals.nearest(amount, Rationals.ONE).equals(amount))
                .isPresent();
    }

    private List<Share> among(List<StepUse> uses) {
        if (uses.isEmpty()) {
            note("no step of the method names %s; its bowl stands last", name());
            return List.of(new Share(Rationals.ONE, "", List.of()));
        }
        List<Share> shares = new ArrayList<>();
        List<StepUse> open = new ArrayList<>();
        for (StepUse use : uses) {
            if (isPutBy(use, shares)) {
                continue;
            }
            Optional<RationalNumber> stated = stated(use);
            if (stated.isEmpty()) {
                open.add(use);
            } else if (left.compareTo(Rationals.ZERO) > 0) {
                shares.add(take(stated.get(), use));
            } else {
                note("step %d uses %s, but earlier steps have used it up", use.step(), name());
            }
        }
        finish(shares, open);
        return shares;
    }

    /** What was put by in an earlier step stands in its bowl until now. */
    private static boolean isPutBy(StepUse use, List<Share> shares) {
        for (int at = 0; words(use).equals(Use.RESERVED) && at < shares.size(); at++) {
            Share share = shares.get(at);
            if (share.words().equals(Use.SET_ASIDE)) {
                List<Integer> steps = Stream.concat(share.steps().stream(), Stream.of(use.step()))
                        .distinct()
                        .toList();
                shares.set(at, new Share(share.fraction(), share.words(), steps));
                return true;
            }
        }
        return false;
    }

    private Share take(RationalNumber stated, StepUse use) {
        RationalNumber share = weighable(stated);
        if (share.compareTo(left) > 0) {
            if (stated.compareTo(left) > 0) {
                note("step %d takes more of %s than is left", use.step(), name());
            }
            share = left;
        }
        left = left.subtract(share);
        return new Share(share, words(use), List.of(use.step()));
    }

    private void finish(List<Share> shares, List<StepUse> open) {
        boolean nothingLeft = left.compareTo(Rationals.ZERO) <= 0;
        if (nothingLeft) {
            for (StepUse use : open) {
                note("step %d uses %s, but earlier shares leave none", use.step(), name());
            }
        } else if (!open.isEmpty()) {
            List<Integer> steps = open.stream().map(StepUse::step).distinct().toList();
            if (steps.size() > 1) {
                note(
                        "%s name %s and no share: one bowl serves them; divide it before filming if each takes a part",
                        Wording.steps(steps), name());
            }
            shares.add(new Share(left, shares.isEmpty() ? "" : "the rest", steps));
        } else if (roundingOnly(shares)) {
            Share last = shares.remove(shares.size() - 1);
            shares.add(new Share(last.fraction().add(left), last.words(), last.steps()));
        } else {
            note("the method leaves part of %s over", name());
            shares.add(new Share(left, "what is left", List.of()));
        }
    }

    /** Thirds of a line do not always weigh whole grams; less than two marks of the scale go to the last share. */
    private boolean roundingOnly(List<Share> shares) {
        return step().isPresent()
                && weighed.amount()
                                .least()
                                .orElse(Rationals.ZERO)
                                .multiply(left)
                                .compareTo(step().get().multiply(Rationals.of(2)))
                        < 0
                && shares.size() > 1;
    }

    private Optional<RationalNumber> stated(StepUse use) {
        Optional<RationalNumber> part = use.use().part().flatMap(this::fractionOfLine);
        if (part.isPresent()) {
            return part;
        }
        if (use.use().part().isPresent()) {
            note("step %d takes a part of %s that cannot be reckoned from the list", use.step(), name());
        }
        String words = use.use().words();
        Optional<RationalNumber> each =
                ShareWords.fraction(words).map(f -> ShareWords.ofWhatIsLeft(words) ? f.multiply(left) : f);
        boolean all = each.map(f -> f.multiply(Rationals.of(use.additions())))
                .filter(Rationals.ONE::equals)
                .isPresent();
        return all ? Optional.of(Rationals.ONE) : each; // "half of the milk after each" of two takes it all
    }

    /** The part over the whole, both as written: in the unit of the line, in its other unit, or by weight. */
    private Optional<RationalNumber> fractionOfLine(Quantity part) {
        return Stream.of(line.written().quantity(), line.written().alternative())
                .flatMap(Optional::stream)
                .filter(whole -> whole.dimension() == part.dimension())
                .map(whole -> over(part.leastInBase(weights.household()), whole.leastInBase(weights.household())))
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> over(
                        weights.grams(part, line.written().ingredient()),
                        line.written()
                                .quantity()
                                .flatMap(whole ->
                                        weights.grams(whole, line.written().ingredient()))));
    }

    private static Optional<RationalNumber> over(Optional<RationalNumber> part, Optional<RationalNumber> whole) {
        return part.flatMap(top ->
                whole.filter(below -> below.compareTo(Rationals.ZERO) > 0).map(top::divide));
    }

    /** The nearest fraction that the scale or spoon can show; exact where amounts are counted or ranged. */
    private RationalNumber weighable(RationalNumber fraction) {
        return step().map(step -> nearest(fraction, step)).orElse(fraction);
    }

    private RationalNumber nearest(RationalNumber fraction, RationalNumber step) {
        if (!(weighed.amount() instanceof Amount.Exact whole)) {
            return fraction;
        }
        RationalNumber rounded = Rationals.nearest(whole.value().multiply(fraction), step);
        return rounded.compareTo(Rationals.ZERO) > 0 ? rounded.divide(whole.value()) : fraction;
    }

    private Optional<RationalNumber> step() {
        return switch (weighed.unit()) {
            case GRAM -> Optional.of(gram);
            case KILOGRAM -> Optional.of(gram.divide(Rationals.of(1000)));
            case MILLILITRE -> Optional.of(Rationals.ONE);
            case LITRE -> Optional.of(Rationals.of(1, 1000));
            case TEASPOON, TABLESPOON, CUP -> Optional.of(Rationals.of(1, 8));
            default -> Optional.empty();
        };
    }

    private static String words(StepUse use) {
        return use.use().words().strip();
    }

    private String name() {
        return "the " + line.written().ingredient();
    }

    private void note(String sentence, Object... values) {
        notes.add(new Note(place, sentence.formatted(values)));
    }
}
