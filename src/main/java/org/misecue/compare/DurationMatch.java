package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.Setting;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import tech.units.indriya.function.RationalNumber;

/**
 * Which written time a spoken time is about. First what it is for, by the words around it; then, among the written times
 * for that, the one whose step is on. A time for which no words tell a purpose is the one of the step that is on.
 */
final class DurationMatch {

    /** Below this the words around say nothing. The weights are from listening; no source. */
    private static final double TELLING = 0.2;

    /** A purpose this much worse than the best one is another purpose. */
    private static final double AS_WELL = 0.8;

    private static final double FAINT = 0.5;
    private static final double BESIDE_HEAT = 0.95;

    /** And this much worse than one that the recipe never asks for: resting, proving and chilling share their words. */
    private static final double ALMOST_AS_WELL = 0.6;

    /** "One minute", "back in a second": nobody misreads a time by more, parts of it may be as short. */
    private static final double FARTHEST = 4.5;

    /** Of fifty times that were said otherwise than written, none was longer than twice. */
    private static final double LONGEST = 2.2;

    /** And by less where another step is on and its purpose is not named. */
    private static final double FAR = 2.5;

    private static final double AS_WRITTEN = 0.2;
    private static final int AT_ONCE = 6;
    private static final double LATER = 0.8;
    private static final double FIRST = 0.5;
    private static final double NEXT = 0.3;
    private static final int REPEAT_REACH = 20;

    /** {@link #farOff} of a time that is twice the other. */
    private static final double TWICE = 0.25;

    private static final double SAID_OTHERWISE = 1;

    private final Hearing heard;
    private final Repairs repairs;
    private final Surroundings around;
    private final List<Setting> durations;
    private final StepWords step;
    private final TimeOrder order;
    private Optional<Last> last = Optional.empty();
    private Optional<Setting> beforeLast = Optional.empty();

    /** The time that found its setting last. */
    private record Last(Setting setting, SpokenQuantity words, Quantity quantity) {}

    DurationMatch(Hearing heard, Surroundings around, List<Setting> durations) {
        this.heard = heard;
        this.repairs = new Repairs(heard);
        this.around = around;
        this.durations = durations;
        this.step = new StepWords(heard);
        this.order = new TimeOrder(heard, durations);
    }

    /**
     * @param quantity what was said, with the unit that was left out
     * @param isSaid whether something was said for a written time before
     */
    Optional<Setting> best(SpokenQuantity said, Quantity quantity, Predicate<Setting> isSaid) {
        if (PassingTime.is(said, heard)) {
            return Optional.empty();
        }
        Guess guess = guess(said, quantity);
        Optional<Setting> found = best(said, quantity, guess, isSaid);
        if (isRepeated(said, quantity) && (guess.any() < FAINT || (isAtOnce(said) && !isWritten(found, quantity)))) {
            found = last.map(Last::setting);
        }
        if (isPutRight(said)) {
            found = last.map(Last::setting);
        }
        if (isInAll(said)) {
            boolean ofTwo = !last.map(Last::setting).equals(beforeLast);
            found = ofTwo && beforeLast.isPresent() ? Optional.empty() : last.map(Last::setting);
        }
        if (found.isEmpty() && isMoreOfLast(said, quantity)) {
            found = last.map(Last::setting);
        }
        found.ifPresent(setting -> {
            beforeLast = last.map(Last::setting);
            last = Optional.of(new Last(setting, said, quantity));
        });
        return found;
    }

    /** "another five, so twenty five altogether": of one written time, or of two that are written apart. */
    private boolean isInAll(SpokenQuantity said) {
        return said.unit().isEmpty() && heard.phrases.within(Kind.TOTAL_AFTER, said.end(), said.end() + 1);
    }

    /** "half an hour – no, it's thirty five minutes". */
    private boolean isPutRight(SpokenQuantity said) {
        return last.filter(one -> said.start() - one.words().end() <= AT_ONCE
                        && repairs.isRepaired(one.words().end(), said.start()))
                .isPresent();
    }

    /** "fifteen minutes first … and then another three", which is too short for any written time. */
    private boolean isMoreOfLast(SpokenQuantity said, Quantity quantity) {
        return order.isMore(said)
                && last.filter(one -> heard.stepAt(said.start())
                                        == heard.stepAt(one.words().start())
                                && base(quantity) < base(one.quantity())
                                && base(one.quantity()) < base(one.setting().quantity()))
                        .isPresent();
    }

    /** "in for thirty minutes … I've set it, thirty minutes". */
    private boolean isRepeated(SpokenQuantity said, Quantity quantity) {
        return last.filter(one -> said.start() - one.words().end() <= REPEAT_REACH
                        && one.quantity().sameSize(quantity, heard.household))
                .isPresent();
    }

    /** "I'd say two hours, so two hours, covered". */
    private boolean isAtOnce(SpokenQuantity said) {
        return last.filter(one -> said.start() - one.words().end() <= AT_ONCE).isPresent() && !order.isMore(said);
    }

    private boolean isWritten(Optional<Setting> setting, Quantity quantity) {
        return setting.filter(one -> isAsWritten(quantity, one)).isPresent();
    }

    private Optional<Setting> best(SpokenQuantity said, Quantity quantity, Guess guess, Predicate<Setting> isSaid) {
        return durations.stream()
                .filter(setting -> isPossible(quantity, setting, said)
                        && !(order.isFirstPart(said) && order.later(setting).isEmpty()))
                .filter(setting -> guess.isUntold()
                        ? isNext(setting, said, isSaid)
                        : guess.allows(fits(setting, said, quantity), Purpose.of(setting)))
                .filter(setting -> isBorneOut(setting, said) && (!isPerSide(said) || step.isPerSide(setting)))
                .max(Comparator.comparingDouble(
                        setting -> score(setting, said, quantity, isSaid) + written(setting, quantity, guess, isSaid)));
    }

    /**
     * How well the best purposes fit.
     *
     * @param any the best of all
     * @param wanted the best of those that the recipe has times for
     * @param unwanted the best of those that set nothing here
     */
    private record Guess(double any, double wanted, double unwanted) {

        /** No words near by tell a purpose, or only faintly one that the recipe has no time for. */
        boolean isUntold() {
            return any < TELLING || (wanted < TELLING && any < FAINT && unwanted < any);
        }

        boolean allows(double fits, Purpose purpose) {
            return fits >= wanted * AS_WELL
                    && fits >= any * ALMOST_AS_WELL
                    && (fits > unwanted || purpose == Purpose.WORK);
        }
    }

    private Guess guess(SpokenQuantity said, Quantity quantity) {
        return new Guess(
                best(Stream.of(Purpose.values()), said),
                best(
                        durations.stream()
                                .filter(setting -> isPossible(quantity, setting, said))
                                .map(Purpose::of),
                        said),
                best(Stream.of(Purpose.WORK, Purpose.ELSEWHERE), said));
    }

    /** The time of the step that is on, or "half an hour more" behind another time. */
    private boolean isNext(Setting setting, SpokenQuantity said, Predicate<Setting> isSaid) {
        return away(setting, said) <= 1 || (order.isMore(said) && order.follows(setting, isSaid));
    }

    /** Words that fit any waiting ("leave it") tell little while another step is on. */
    private boolean isBorneOut(Setting setting, SpokenQuantity said) {
        return away(setting, said) <= 1
                || step.named(setting, said) >= 2 * StepWords.NAMED
                || order.isMore(said)
                || Purpose.of(setting).named(said, around) >= TELLING
                || HeatAndTime.isTimeBesideHeat(said, heard);
    }

    /** A figure that is written as it was said needs less telling, if it is told at all. */
    private double fits(Setting setting, SpokenQuantity said, Quantity quantity) {
        double fits = fits(Purpose.of(setting), said);
        if (Purpose.of(setting) == Purpose.REST && step.isLeftToCool(setting)) {
            fits = Math.max(fits, fits(Purpose.COOL, said));
        }
        return isAsWritten(quantity, setting) && away(setting, said) <= 1 && fits >= TELLING / 2
                ? fits + AS_WRITTEN
                : fits;
    }

    /** The figure is the best hint where no words tell more; and nobody gives a setting a second figure for nothing. */
    private double written(Setting setting, Quantity quantity, Guess guess, Predicate<Setting> isSaid) {
        if (isAsWritten(quantity, setting)) {
            return guess.isUntold() ? 4 * AS_WRITTEN : 2 * AS_WRITTEN;
        }
        return isSaid.test(setting) ? -2 * AS_WRITTEN : 0;
    }

    private boolean isPerSide(SpokenQuantity said) {
        return heard.phrases.endAt(Kind.PER_SIDE, said.end()).isPresent();
    }

    private boolean isAsWritten(Quantity quantity, Setting setting) {
        Quantity written = setting.quantity();
        return base(quantity) >= base(written)
                && base(quantity)
                        <= written.mostInBase(heard.household)
                                .map(RationalNumber::doubleValue)
                                .orElse(0.0);
    }

    private double fits(Purpose purpose, SpokenQuantity said) {
        boolean heat = purpose == Purpose.BAKE && HeatAndTime.isTimeBesideHeat(said, heard);
        double fits = purpose.fits(said, around);
        return heat ? Math.max(BESIDE_HEAT, fits) : fits;
    }

    private double best(Stream<Purpose> purposes, SpokenQuantity said) {
        return purposes.mapToDouble(purpose -> fits(purpose, said)).max().orElse(0);
    }

    private int away(Setting setting, SpokenQuantity said) {
        int on = heard.stepAt(said.start());
        return on == 0 ? 1 : Math.abs(on - setting.step());
    }

    private double score(Setting setting, SpokenQuantity said, Quantity quantity, Predicate<Setting> isSaid) {
        int away = away(setting, said);
        double score = away == 0 ? 1.2 : away == 1 ? 0.6 : 0;
        score += fits(Purpose.of(setting), said) + step.named(setting, said);
        boolean later = order.isMore(said)
                ? order.follows(setting, isSaid)
                : order.isSecond(said) && !order.earlier(setting).isEmpty();
        score += later ? LATER : 0;
        score += last.filter(one -> order.isNext(setting, one.setting())).isPresent() ? NEXT : 0;
        score += !isSaid.test(setting) && order.earlier(setting).stream().allMatch(isSaid) ? FIRST : 0;
        double farOff = farOff(quantity, setting);
        score -= isSaid.test(setting) && farOff >= TWICE ? SAID_OTHERWISE : 0;
        return score - farOff;
    }

    private boolean isPossible(Quantity quantity, Setting setting, SpokenQuantity said) {
        double ratio = base(quantity) / base(setting.quantity());
        boolean named = away(setting, said) == 0 || Purpose.of(setting).named(said, around) >= FAINT;
        return Math.max(ratio, 1 / ratio) <= (named ? FARTHEST : FAR) && ratio <= LONGEST;
    }

    /** A weak hint only: a wrong figure must still find its own setting. */
    private double farOff(Quantity quantity, Setting setting) {
        return 0.25 * Math.abs(Math.log(base(quantity) / base(setting.quantity())) / Math.log(2));
    }

    private double base(Quantity quantity) {
        return quantity.leastInBase(heard.household)
                .map(RationalNumber::doubleValue)
                .orElse(0.0);
    }
}
