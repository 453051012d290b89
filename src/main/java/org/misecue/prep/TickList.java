package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.misecue.notice.BadInput;
import org.misecue.notice.NumberRun;
import org.misecue.notice.Place;

/** Finds what somebody ticks: bowls by number, jobs by letter: "3,5-7,B"; or what stands on a page by its key. */
public final class TickList {

    private TickList() {}

    /**
     * What the ticks are kept under.
     *
     * @param option that the text was given to
     * @throws BadInput at the first bowl or job that is not on the list
     */
    public static List<String> keys(PrepPlan plan, String option, String text) {
        List<String> keys = new ArrayList<>();
        for (String part : text.split(",", -1)) {
            String word = part.strip();
            NumberRun.of(option, word)
                    .ifPresentOrElse(
                            run -> run.numbers().forEach(number -> keys.add(bowl(plan, option, number))),
                            () -> keys.add(job(plan, option, word)));
        }
        return keys;
    }

    /** Everything that could be ticked now. */
    public static List<String> standing(PrepPlan plan) {
        return TickKeys.all(plan);
    }

    /** What the tick of a bowl is kept under. */
    public static String key(PrepPlan plan, Bowl bowl) {
        return TickKeys.of(bowl, plan.sets().all());
    }

    /** What the tick of a job is kept under. */
    public static String key(Job job) {
        return TickKeys.of(job);
    }

    /** What the tick of something weighed once more is kept under. */
    public static String key(Spare spare) {
        return TickKeys.of(spare);
    }

    /** What the tick of something made earlier is kept under: that all its bowls are filled. */
    public static String key(SwapOut swapOut) {
        return TickKeys.of(swapOut);
    }

    private static String bowl(PrepPlan plan, String option, int number) {
        List<Bowl> bowls = plan.bowlsOf(1);
        return bowls.stream()
                .filter(bowl -> bowl.number() == number)
                .findFirst()
                .map(bowl -> TickKeys.of(bowl, plan.sets().all()))
                .orElseThrow(() -> new BadInput(
                        Place.of(option),
                        bowls.isEmpty()
                                ? "there are no bowls to tick."
                                : "there is no bowl " + number + "; the bowls go from 1 to " + bowls.size() + "."));
    }

    private static String job(PrepPlan plan, String option, String letter) {
        String wanted = letter.toUpperCase(Locale.ROOT);
        return plan.jobs().stream()
                .filter(job -> plan.letter(job).equals(wanted))
                .findFirst()
                .map(TickKeys::of)
                .orElseThrow(() -> new BadInput(
                        Place.of(option),
                        "there is no bowl or job “" + letter + "”; bowls have numbers from 1 to "
                                + plan.bowlsOf(1).size() + " and jobs letters"
                                + (plan.jobs().isEmpty()
                                        ? "."
                                        : " from A to "
                                                + plan.letter(plan.jobs()
                                                        .get(plan.jobs().size() - 1)) + ".")));
    }
}
