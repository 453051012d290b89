package org.misecue.desk.find;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.misecue.align.StepSpan;
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
            int step, String text, Duration at, String time, String from, String wide, List<Shot> shots) {}

    static Strip of(Worktop worktop, Roll roll) {
        List<Shot> shots = shots(worktop);
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
                    first ? of(span.step(), shots) : List.of()));
        }
        return new Strip(stretches);
    }

    private static List<Shot> of(int step, List<Shot> shots) {
        return shots.stream().filter(shot -> shot.step() == step).toList();
    }

    /** What is wrong with a shot template keeps nobody from finding. */
    private static List<Shot> shots(Worktop worktop) {
        try {
            return worktop.shots().shots();
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
