package org.misecue.desk.find;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.misecue.align.StepSpan;
import org.misecue.edit.FilmedTalk;
import org.misecue.edit.LoggedShot;
import org.misecue.edit.ShotLog;
import org.misecue.edit.Standing;
import org.misecue.narration.Clock;
import org.misecue.notice.BadInput;
import org.misecue.recipe.Step;
import org.misecue.shots.Shot;
import org.misecue.worktop.Worktop;

/** A roll from its first to its last moment, with the steps that are on. */
public record Strip(List<Stretch> stretches) {

    /**
     * A step while it is on.
     *
     * @param from where it begins, in per cent of the roll
     * @param wide how much of the roll it lasts, in per cent
     * @param shots that the step was to be filmed in; named once, where it first is on
     */
    public record Stretch(
            int step, String text, Duration at, String time, String from, String wide, List<Placed> shots) {}

    /**
     * A shot of the step.
     *
     * @param at where it is by the shot log, or else where its step begins
     * @param time where the log tells it; else empty
     */
    public record Placed(Shot shot, Duration at, Optional<String> time) {}

    static Strip of(Worktop worktop, Roll roll) {
        List<LoggedShot> shots = shots(worktop, roll);
        Set<Integer> seen = new HashSet<>();
        List<Stretch> stretches = new ArrayList<>();
        for (StepSpan span : roll.steps()) {
            boolean first = seen.add(span.step());
            stretches.add(new Stretch(
                    span.step(),
                    text(worktop, span.step()),
                    span.start(),
                    Clock.hms(span.start()),
                    percent(span.start(), roll.length()),
                    percent(span.end().minus(span.start()), roll.length()),
                    first ? of(span, shots) : List.of()));
        }
        return new Strip(stretches);
    }

    private static List<Placed> of(StepSpan span, List<LoggedShot> shots) {
        return shots.stream()
                .filter(one -> one.shot().step() == span.step())
                .map(one -> placed(one, span))
                .toList();
    }

    private static Placed placed(LoggedShot logged, StepSpan span) {
        return Optional.of(logged)
                .filter(one -> one.standing() == Standing.SLATED || one.standing() == Standing.SPOKEN)
                .map(one -> one.places().get(0).from())
                .map(from -> new Placed(logged.shot(), from, Optional.of(Clock.hms(from))))
                .orElseGet(() -> new Placed(logged.shot(), span.start(), Optional.empty()));
    }

    /** What is wrong with a shot template keeps nobody from finding. */
    private static List<LoggedShot> shots(Worktop worktop, Roll roll) {
        try {
            FilmedTalk talk = new FilmedTalk(roll.title(), roll.length(), roll.said());
            return ShotLog.of(worktop.shots(), worktop.alignment(), List.of(talk))
                    .shots();
        } catch (BadInput e) {
            return List.of();
        }
    }

    private static String text(Worktop worktop, int number) {
        return worktop.recipe().steps().stream()
                .filter(step -> step.number() == number)
                .map(Step::text)
                .findFirst()
                .orElse("");
    }

    private static String percent(Duration part, Duration whole) {
        double share = whole.isZero() ? 0 : 100.0 * part.toMillis() / whole.toMillis();
        return String.format(Locale.ROOT, "%.3f%%", Math.min(100, share));
    }
}
