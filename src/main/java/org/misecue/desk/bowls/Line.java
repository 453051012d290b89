package org.misecue.desk.bowls;

import java.util.ArrayList;
import java.util.List;
import org.misecue.prep.Bowl;
import org.misecue.prep.Job;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.PrepWords;
import org.misecue.prep.Spare;
import org.misecue.prep.SwapOut;
import org.misecue.prep.TickList;

/**
 * Something of the plan that is ticked off.
 *
 * @param id its place on the page: "bowl-3", "job-B"
 * @param words what it is called: "bowl 3, lemon juice"
 * @param key what its tick is kept under; another one when its amount changes
 * @param ticked whether it is done
 */
public record Line(String id, String words, String key, boolean ticked) {

    static Line of(PrepPlan plan, Bowl bowl) {
        return new Line(
                "bowl-" + bowl.number(),
                "bowl " + bowl.number() + ", " + PrepWords.inShort(bowl),
                TickList.key(plan, bowl),
                plan.isTicked(bowl));
    }

    static Line of(PrepPlan plan, Job job) {
        String letter = plan.letter(job);
        return new Line("job-" + letter, "job " + letter + ", " + job.what(), TickList.key(job), plan.isTicked(job));
    }

    static Line of(PrepPlan plan, Spare spare) {
        return new Line(
                "spare-" + (plan.spares().indexOf(spare) + 1),
                PrepWords.content(spare.content()) + ", " + spare.kind().words(),
                TickList.key(spare),
                plan.isTicked(spare));
    }

    static Line of(PrepPlan plan, SwapOut swapOut) {
        return new Line("earlier-" + swapOut.after(), swapOut.state(), TickList.key(swapOut), plan.isTicked(swapOut));
    }

    static List<Line> all(PrepPlan plan) {
        List<Line> all = new ArrayList<>();
        plan.bowlsOf(1).forEach(bowl -> all.add(of(plan, bowl)));
        plan.jobs().forEach(job -> all.add(of(plan, job)));
        plan.spares().forEach(spare -> all.add(of(plan, spare)));
        plan.swapOuts().forEach(swapOut -> all.add(of(plan, swapOut)));
        return all;
    }
}
