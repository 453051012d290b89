package org.misecue.compare;

import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.compare.Mention.Role;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;

/**
 * What a verdict rests on, as far as it bears on how sure it is.
 *
 * @param score how surely the amount belongs to its line, on the scale of {@link Scoring}
 */
record Grounds(double score, Set<Doubt> doubts) {

    private static final Duration LATE = Duration.ofMinutes(2);

    /** An amount this many words from a name may have been said for it. */
    private static final int NEAR_NAME = 15;

    Grounds {
        doubts = Set.copyOf(doubts);
    }

    boolean has(Doubt doubt) {
        return doubts.contains(doubt);
    }

    /** The same with one more doubt. */
    Grounds with(Doubt doubt) {
        Set<Doubt> more = EnumSet.of(doubt);
        more.addAll(doubts);
        return new Grounds(score, more);
    }

    private Grounds with(Doubt doubt, boolean there) {
        return there ? with(doubt) : this;
    }

    /** A place alone, with nothing else against it. */
    static Grounds of(double score, SpokenQuantity said) {
        return new Grounds(score, Set.of())
                .with(Doubt.ASSUMED_UNIT, said.unit().isEmpty())
                .with(Doubt.HEDGED, said.amount().hedged());
    }

    /**
     * @param mentions everything said of the line, in time order
     * @param standing what the ledger makes of it
     */
    static Grounds of(List<Mention> mentions, List<Ledger.Entry> standing, Hearing heard) {
        boolean bare =
                standing.stream().flatMap(entry -> entry.mentions().stream()).allMatch(Mention::assumedUnit);
        boolean hedged =
                standing.stream().anyMatch(entry -> entry.quantity().amount().hedged());
        double score = standing.stream().mapToDouble(Grounds::score).min().orElse(0);
        return new Grounds(score, Set.of())
                .with(Doubt.ASSUMED_UNIT, bare)
                .with(Doubt.HEDGED, hedged)
                .with(Doubt.CONTRADICTED, standing.size() > 1)
                .with(Doubt.CORRECTED_LATE, isCorrectedLate(mentions, heard));
    }

    /** Of a setting: these are told by their units, so that there is no score; some figures right and some wrong contradict. */
    static Grounds of(List<Settled.Said> standing, Verdict best, Verdict worst) {
        return new Grounds(Scoring.SURE, Set.of())
                .with(
                        Doubt.ASSUMED_UNIT,
                        standing.stream().allMatch(said -> said.words().unit().isEmpty()))
                .with(Doubt.HEDGED, standing.stream().allMatch(said -> said.quantity()
                        .amount()
                        .hedged()))
                .with(Doubt.CONTRADICTED, best != worst && worst == Verdict.DIFFERS);
    }

    /** Amounts near a name of the line that found no home, though they would fit it. */
    static List<SpokenQuantity> strays(int line, List<SpokenQuantity> homeless, Hearing heard) {
        return homeless.stream()
                .filter(said -> isNamedNear(line, said, heard))
                .filter(said -> Fit.of(said, heard.lines.get(line), Optional.empty(), heard) > 0)
                .toList();
    }

    private static boolean isNamedNear(int line, SpokenQuantity said, Hearing heard) {
        Stream<NameHit> near = heard.namesIn(said.start() - NEAR_NAME, said.end() + NEAR_NAME).stream();
        return near.anyMatch(name -> name.lines().contains(line) && heard.sameSource(said.start(), name.start()));
    }

    /** Parts are as sure as the weakest of them; an amount said twice is as sure as the better time. */
    private static double score(Ledger.Entry entry) {
        boolean inParts = entry.mentions().stream().anyMatch(mention -> mention.role() == Role.ADDS);
        var scores = entry.mentions().stream().mapToDouble(Mention::score);
        return (inParts ? scores.min() : scores.max()).orElse(0);
    }

    private static boolean isCorrectedLate(List<Mention> mentions, Hearing heard) {
        for (int i = 1; i < mentions.size(); i++) {
            Mention mention = mentions.get(i);
            Mention before = mentions.get(i - 1);
            if (mention.role() == Role.CORRECTS && isLate(before.start(), mention.start(), heard)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLate(int from, int to, Hearing heard) {
        Duration gap =
                heard.words.moment(to).at().minus(heard.words.moment(from).at());
        return !heard.sameSource(from, to) || gap.compareTo(LATE) >= 0;
    }
}
