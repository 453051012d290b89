package org.misecue.desk.bowls;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.misecue.desk.timers.TimerBoard;
import org.misecue.prep.Bowl;
import org.misecue.prep.Caution;
import org.misecue.prep.Job;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.Spare;
import org.misecue.prep.SwapOut;
import org.misecue.prep.TickList;

/**
 * The mise en place as one device shows it.
 *
 * @param plan with the ticks as they are on the disk now
 * @param timers that run
 * @param look what this device wants to see
 * @param refused a tick that could not be put, or taken
 * @param path the address of the page
 * @param now by the desk's clock
 * @param turn of the answer
 * @param answer whether it answers a touch
 */
public record Tray(
        PrepPlan plan,
        TimerBoard timers,
        Look look,
        Optional<Refused> refused,
        String path,
        LocalDateTime now,
        long turn,
        boolean answer) {

    /** A tick that was refused: at which place of the page, and why. */
    public record Refused(String id, String sentence) {}

    public Left left() {
        return Left.of(plan);
    }

    public Line line(Bowl bowl) {
        return Line.of(plan, bowl);
    }

    public Line line(Job job) {
        return Line.of(plan, job);
    }

    public Line line(Spare spare) {
        return Line.of(plan, spare);
    }

    public Line line(SwapOut swapOut) {
        return Line.of(plan, swapOut);
    }

    /** What this device ticked last, if it still stands. */
    public Optional<Line> last() {
        return Line.all(plan).stream()
                .filter(line -> line.ticked() && line.key().equals(look.last()))
                .findFirst();
    }

    /** The bowls to show: one set, for the others are the same. */
    public List<Bowl> bowls() {
        return plan.bowlsOf(1).stream().filter(bowl -> shows(line(bowl))).toList();
    }

    public List<Job> jobs() {
        return plan.jobs().stream().filter(job -> shows(line(job))).toList();
    }

    public List<Spare> spares() {
        return plan.spares().stream().filter(spare -> shows(line(spare))).toList();
    }

    public List<SwapOut> swapOuts() {
        return plan.swapOuts().stream().filter(one -> shows(line(one))).toList();
    }

    private boolean shows(Line line) {
        return !look.leftOnly() || !line.ticked() || refusal(line).isPresent();
    }

    /** The bowl that is weighed next. */
    public boolean isNext(Bowl bowl) {
        return plan.bowlsOf(1).stream()
                .filter(one -> !plan.isTicked(one))
                .findFirst()
                .filter(bowl::equals)
                .isPresent();
    }

    /** Jobs whose time on the clock has come today. */
    public List<Job> due() {
        return plan.jobs().stream()
                .filter(job -> !plan.isTicked(job))
                .filter(job -> timers.of(TickList.key(job)).isEmpty())
                .filter(job -> job.at()
                        .filter(at -> !at.isAfter(now) && at.toLocalDate().equals(now.toLocalDate()))
                        .isPresent())
                .toList();
    }

    /** What to mind with a bowl, in full. */
    public List<Caution> cautions(Bowl bowl) {
        return plan.cautions().stream()
                .filter(caution -> caution.bowls().contains(bowl.number()))
                .toList();
    }

    /** Why a tick on this line was refused just now. */
    public Optional<String> refusal(Line line) {
        return refused.filter(one -> one.id().equals(line.id())).map(Refused::sentence);
    }

    /** Why a tick was refused on what is not on the list any more. */
    public Optional<String> strayRefusal() {
        return refused.filter(one ->
                        Line.all(plan).stream().noneMatch(line -> line.id().equals(one.id())))
                .map(Refused::sentence);
    }
}
