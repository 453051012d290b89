package org.misecue.desk.bowls;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.prep.Bowl;
import org.misecue.prep.Content;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.Spare;
import org.misecue.prep.SwapOut;
import org.misecue.prep.Tally;
import org.misecue.prep.Wording;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * How much is left to do.
 *
 * @param bowls bowls without a tick, each counted once for all sets
 * @param jobs jobs without a tick
 * @param besides what is weighed once more or made earlier, without a tick
 * @param grams left to weigh in all sets
 * @param leastOnly whether something of it has no known weight
 */
public record Left(int bowls, int jobs, int besides, RationalNumber grams, boolean leastOnly) {

    static Left of(PrepPlan plan) {
        List<Bowl> bowls =
                plan.bowlsOf(1).stream().filter(bowl -> !plan.isTicked(bowl)).toList();
        List<Spare> spares =
                plan.spares().stream().filter(spare -> !plan.isTicked(spare)).toList();
        List<SwapOut> earlier =
                plan.swapOuts().stream().filter(one -> !plan.isTicked(one)).toList();
        List<Content> sets = contents(bowls);
        List<Content> once = Stream.concat(
                        spares.stream().map(Spare::content),
                        earlier.stream().flatMap(one -> contents(one.bowls()).stream()))
                .toList();
        return new Left(
                bowls.size(),
                (int) plan.jobs().stream().filter(job -> !plan.isTicked(job)).count(),
                spares.size() + earlier.size(),
                grams(sets).multiply(Rationals.of(plan.sets().all())).add(grams(once)),
                Stream.concat(sets.stream(), once.stream()).map(Content::grams).anyMatch(Optional::isEmpty));
    }

    private static List<Content> contents(Collection<Bowl> bowls) {
        return bowls.stream().flatMap(bowl -> bowl.contents().stream()).toList();
    }

    private static RationalNumber grams(Collection<Content> contents) {
        return contents.stream()
                .flatMap(content -> content.grams().stream())
                .reduce(Rationals.ZERO, RationalNumber::add);
    }

    /** "13 bowls and 5 jobs left". */
    public String words() {
        String more = besides == 0 ? "" : besides + " besides";
        List<String> parts = Stream.of(some(bowls, "bowl"), some(jobs, "job"), more)
                .filter(part -> !part.isEmpty())
                .toList();
        return parts.isEmpty() ? "Nothing left" : Wording.list(parts) + " left";
    }

    /** "2.96 kg to weigh"; empty where all is weighed. */
    public String weight() {
        if (grams.signum() == 0) {
            return leastOnly ? "something to weigh whose weight is not known" : "";
        }
        return (leastOnly ? "at least " : "") + Tally.weight(grams) + " to weigh";
    }

    private static String some(int number, String noun) {
        return number == 0 ? "" : Wording.count(number, noun);
    }
}
