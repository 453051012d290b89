package org.misecue.prep;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.scale.Sets;
import tech.units.indriya.function.RationalNumber;

/**
 * The mise en place of one filming day.
 *
 * @param title the dish
 * @param factor the size of the batch, 1 as written
 * @param sets how many sets of bowls stand ready
 * @param bowls take by take, within a take in the order of the method; what no step names comes last
 * @param spares what is weighed out once more, once for all takes
 * @param swapOuts what stands ready before its shot, as wanted
 * @param suggestions what else would save waiting if it stood ready
 * @param tally what is weighed out in all
 * @param toHand what the recipe lists without an amount
 * @param jobs what must be started ahead, earliest first
 * @param kit tins, tools and vessels
 * @param shopping for all takes together, by aisle
 * @param cautions where the work needs care
 * @param notes what scaling had to bend, and what the method leaves open about the bowls
 * @param ticks what is ticked off, as {@link TickList} names it; ticks on what is no longer there are no harm
 */
public record PrepPlan(
        String title,
        RationalNumber factor,
        Sets sets,
        List<Bowl> bowls,
        List<Spare> spares,
        List<SwapOut> swapOuts,
        List<SwapOut> suggestions,
        Tally tally,
        List<ToHand> toHand,
        List<Job> jobs,
        List<KitItem> kit,
        List<Purchase> shopping,
        List<Caution> cautions,
        List<Note> notes,
        Set<String> ticks) {

    /** Stands under every list of cautions and allergens. */
    public static final String LAW =
            "These are reminders, not advice on the law: local food law and the label on the packet decide.";

    /** All bowls on the trays: those of the takes, and those of what is made earlier. */
    public List<Bowl> filled() {
        return Stream.concat(bowls.stream(), swapOuts.stream().flatMap(swapOut -> swapOut.bowls().stream()))
                .toList();
    }

    /** How many takes are filmed. */
    public int takes() {
        return sets.takes();
    }

    /** "take 2", or "spare" for a set beyond the takes. */
    public String setName(int set) {
        if (set == 0) {
            return "made earlier";
        }
        if (set <= sets.takes()) {
            return "take " + set;
        }
        return sets.spare() == 1 ? "spare" : "spare " + (set - sets.takes());
    }

    public PrepPlan withTicks(Set<String> done) {
        return new PrepPlan(
                title,
                factor,
                sets,
                bowls,
                spares,
                swapOuts,
                suggestions,
                tally,
                toHand,
                jobs,
                kit,
                shopping,
                cautions,
                notes,
                Set.copyOf(done));
    }

    public boolean isTicked(Bowl bowl) {
        return ticks.contains(TickKeys.of(bowl, sets.all()));
    }

    public boolean isTicked(Job job) {
        return ticks.contains(TickKeys.of(job));
    }

    public boolean isTicked(Spare spare) {
        return ticks.contains(TickKeys.of(spare));
    }

    /** Whether all its bowls are filled. */
    public boolean isTicked(SwapOut swapOut) {
        return ticks.contains(TickKeys.of(swapOut));
    }

    /** "A" for the first job, "AA" after "Z". */
    public String letter(Job job) {
        int place = jobs.indexOf(job);
        String last = String.valueOf((char) ('A' + place % 26));
        return place < 26 ? last : (char) ('A' + place / 26 - 1) + last;
    }

    /** What to mind with a bowl, in a few words each. */
    public List<String> cautions(Bowl bowl) {
        return briefs(caution -> caution.bowls().contains(bowl.number()));
    }

    /** What to mind at a job: with its bowls, or where it has none at the step that it is for. */
    public List<String> cautions(Job job) {
        return briefs(caution -> job.bowls().isEmpty()
                ? job.step() > 0 && caution.steps().contains(job.step())
                : caution.bowls().stream().anyMatch(job.bowls()::contains));
    }

    private List<String> briefs(Predicate<Caution> concerned) {
        return cautions.stream()
                .filter(concerned)
                .map(Caution::brief)
                .distinct()
                .toList();
    }

    /** The bowls of one take. */
    public List<Bowl> bowlsOf(int take) {
        return bowls.stream().filter(bowl -> bowl.take() == take).toList();
    }
}
