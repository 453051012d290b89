package org.misecue.recipe;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.Wait.Where;
import tech.units.indriya.function.RationalNumber;

/** Tells what waits in a step, how long and where, and what the hands do. */
final class WaitReader {

    private static final RationalNumber SECONDS = RationalNumber.of(60, 1);
    private static final Set<String> NO_WAITS = Set.of("heat-oven");
    /** A step may say of these twice that it waits, once with a time and once without. */
    private static final Set<String> OFTEN = Set.of("cool", "rest");

    private static final Pattern FREEZER = Pattern.compile("\\bfree(?:ze|zing|zer)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern FRIDGE = Pattern.compile(
            "\\b(?:fridge|refrigerat(?:e|ed|or|ing)|chill(?:ed|ing)?|cold place)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern OVEN =
            Pattern.compile("(?<!\\b(?:from|out of|off) the )\\boven\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern PREHEATS =
            Pattern.compile("\\b(?:pre-?heat|heat|turn|set)\\b[^.;]*\\boven\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern THEN = Pattern.compile("\\bthen\\b", Pattern.CASE_INSENSITIVE);
    private static final Set<String> IN_OVEN = Set.of("bake", "toast");

    private final Step step;
    private final Sightings sightings;
    private final List<Stated> times;
    private final List<Stated> ovens;
    private final Optional<Quantity> ovenBefore;

    private WaitReader(
            Step step, Sightings sightings, List<Stated> times, List<Stated> ovens, Optional<Quantity> oven) {
        this.step = step;
        this.sightings = sightings;
        this.times = times;
        this.ovens = ovens;
        this.ovenBefore = oven;
    }

    /** @param oven how hot earlier steps left it */
    static WaitReader of(Step step, Optional<Quantity> oven) {
        Sightings sightings = Techniques.standard().in(Wording.of(step.text()));
        return new WaitReader(
                step,
                sightings,
                DurationReader.stated(sightings, step.number(), step.line()),
                OvenReader.stated(sightings.wording(), step.number(), step.line()),
                oven);
    }

    Optional<Quantity> ovenAfter() {
        return ovens.isEmpty()
                ? ovenBefore
                : Optional.of(ovens.get(ovens.size() - 1).setting().quantity());
    }

    /** The waits that a clause tells, in the order of its words. */
    List<Wait> in(Clause clause) {
        List<Wait> waits = new ArrayList<>();
        List<Stated> alone = times.stream()
                .filter(time -> clause.holds(time.start()) && Effort.runsAlone(time.setting(), sightings.wording()))
                .toList();
        for (Stated time : alone) {
            waits.add(stated(time, clause));
        }
        if (alone.isEmpty()) {
            in(clause, sightings)
                    .filter(each -> each.technique().alone())
                    .findFirst()
                    .flatMap(each -> usual(each, clause))
                    .ifPresent(waits::add);
        }
        return waits;
    }

    /** What the hands do in a clause, in the order of its words. */
    List<Sightings.Sighting> hands(Clause clause) {
        return in(clause, sightings).filter(each -> !each.technique().alone()).toList();
    }

    long handsMinutes(Clause clause) {
        Duration stated = times.stream()
                .filter(time -> clause.holds(time.start()) && !Effort.runsAlone(time.setting(), sightings.wording()))
                .map(time -> most(time.setting()))
                .reduce(Duration.ZERO, Duration::plus);
        Duration usual =
                in(clause, sightings).map(each -> each.technique().hands()).reduce(Duration.ZERO, Duration::plus);
        return stated.isZero() ? usual.toMinutes() : stated.toMinutes();
    }

    List<String> techniques(Clause clause) {
        return in(clause, sightings)
                .filter(each -> each.technique().listed())
                .map(each -> each.technique().key())
                .distinct()
                .toList();
    }

    private static Stream<Sightings.Sighting> in(Clause clause, Sightings sightings) {
        return sightings.list().stream().filter(each -> clause.holds(each.start()));
    }

    private Wait stated(Stated time, Clause clause) {
        Setting setting = time.setting();
        Duration least = setting.quantity()
                .leastInBase(Household.METRIC)
                .map(WaitReader::duration)
                .orElse(Duration.ZERO);
        Where where = where(setting.what(), time.start());
        return new Wait(setting.what(), least, most(setting), where, oven(where, clause), true);
    }

    /** The usual time of what a clause says without one, unless the step gives the time elsewhere. */
    private Optional<Wait> usual(Sightings.Sighting sighting, Clause clause) {
        String what = sighting.technique().key().toLowerCase(Locale.ROOT);
        boolean timed = times.stream().anyMatch(time -> time.setting().what().equals(what));
        if (NO_WAITS.contains(what) || (timed && !OFTEN.contains(what))) {
            return Optional.empty();
        }
        return UsualWaits.of(what, Sentences.around(step.text(), sighting.start()))
                .map(time -> {
                    Where where = where(what, sighting.start());
                    return new Wait(what, time, time, where, oven(where, clause), false);
                });
    }

    private Where where(String what, int place) {
        String sentence = untilThen(place);
        if (IN_OVEN.contains(what)) {
            return Where.OVEN;
        }
        if (FREEZER.matcher(sentence).find()) {
            return Where.FREEZER;
        }
        if (what.equals("chill") || FRIDGE.matcher(sentence).find()) {
            return Where.FRIDGE;
        }
        boolean inside =
                OVEN.matcher(sentence).find() && !PREHEATS.matcher(sentence).find();
        return inside && !what.equals("prove") && !what.equals("rest") ? Where.OVEN : Where.ROOM;
    }

    /** The part of the sentence around a place: what comes "then" may be elsewhere. */
    private String untilThen(int place) {
        int start = Sentences.start(step.text(), place);
        String sentence = Sentences.around(step.text(), place);
        int from = 0;
        for (MatchResult then : THEN.matcher(sentence).results().toList()) {
            if (start + then.start() > place) {
                return sentence.substring(from, then.start());
            }
            from = then.start();
        }
        return sentence.substring(from);
    }

    /** The figure of the clause, or else the last before it, or that which earlier steps left, or one behind it. */
    private Optional<Quantity> oven(Where where, Clause clause) {
        if (where != Where.OVEN) {
            return Optional.empty();
        }
        return ovens.stream()
                .filter(each -> clause.holds(each.start()))
                .findFirst()
                .or(() -> ovens.stream()
                        .filter(each -> each.start() < clause.start())
                        .reduce((one, other) -> other))
                .map(each -> each.setting().quantity())
                .or(() -> ovenBefore)
                .or(() -> ovens.stream().map(each -> each.setting().quantity()).findFirst());
    }

    private static Duration most(Setting setting) {
        return setting.quantity()
                .mostInBase(Household.METRIC)
                .map(WaitReader::duration)
                .orElse(Duration.ZERO);
    }

    private static Duration duration(RationalNumber minutes) {
        return Duration.ofSeconds(
                Objects.requireNonNull(minutes).multiply(SECONDS).longValue());
    }
}
