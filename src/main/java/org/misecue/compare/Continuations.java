package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** How much speaks for a line that the amount goes on with what was said of it: repairs it, adds to it, says it again. */
final class Continuations {

    private static final int REPAIR_REACH = 12;
    private static final double REPAIR_BONUS = 6;
    private static final int ADDS_REACH = 60;
    private static final double ADDS_BONUS = 4;
    private static final double CONFIRMS = 3;
    private static final double GOES_ON = 2.5;
    private static final double SAID_OUTRIGHT = 4.7;
    private static final int SHARE_REACH = 10;
    private static final int CONFIRM_REACH = 20;
    private static final int WHOSE_REACH = 4;

    private static final Set<String> GOING = Set.of("go", "goes", "going", "went");

    private final Hearing heard;
    private final Mentions mentions;
    private final Repairs repairs;
    private final Restarts restarts;
    private final Additions additions;
    private final SheetAndHand sheet;
    private final Products products;

    Continuations(Hearing heard, Mentions mentions) {
        this.heard = heard;
        this.mentions = mentions;
        this.repairs = new Repairs(heard);
        this.restarts = new Restarts(heard);
        this.additions = new Additions(heard);
        this.sheet = new SheetAndHand(heard);
        this.products = new Products(heard);
    }

    /**
     * @param mayGoOn whether the amount may repair or add to what was measured last, no other name being right beside it
     */
    double of(SpokenQuantity said, NameHit name, int line, boolean mayGoOn) {
        double score = 0;
        if (mayGoOn) {
            score += repairs(said, line) ? REPAIR_BONUS : 0;
            score += adds(said, line) ? ADDS_BONUS : 0;
            score += !heard.isPassing(name) && goesOn(said, name, line) ? GOES_ON : 0;
            score += isSum(said, line) || confirms(said, line) || goesIn(said, line) ? CONFIRMS : 0;
            score += latest(line).filter(last -> products.isOne(said, last)).isPresent() ? REPAIR_BONUS : 0;
        }
        score += isSumOfParts(said, line) ? REPAIR_BONUS : 0;
        score += isShareSaidOutright(said, line) ? SAID_OUTRIGHT : 0;
        score += mayGoOn && sheet.isByHand(said, latest(line)) ? REPAIR_BONUS : 0;
        return score + (isPair(said, line) ? CONFIRMS : 0);
    }

    /** Whether the amount adds to what was measured last or sums it up, however long ago its name was said. */
    boolean goesOn(SpokenQuantity said, int line) {
        return heard.on(Mechanism.GOES_ON) && (adds(said, line) || isSum(said, line) || isSumOfParts(said, line));
    }

    /** What was measured last, if it was of the line. */
    private Optional<Mention> latest(int line) {
        return mentions.last().filter(last -> last.line() == line);
    }

    /** "a hundred and fifty, sorry, a hundred and twenty five": the second is of what the first was of. */
    private boolean repairs(SpokenQuantity said, int line) {
        Optional<Mention> last = mentions.last(line).filter(before -> before.end() <= said.start());
        if (last.isEmpty() || said.start() - last.get().end() > 2 * REPAIR_REACH) {
            return false;
        }
        List<NameHit> since = heard.namesIn(last.get().end(), said.start()).stream()
                .filter(name -> name.end() <= said.start())
                .toList();
        if (since.stream().anyMatch(name -> isNextTopic(name, line))) {
            return false;
        }
        int from = since.stream().mapToInt(NameHit::end).max().orElseGet(() -> Repairs.from(mentions.of(line)));
        return latest(line).filter(mention -> restarts.isReadOff(said, mention)).isPresent()
                || repairs.isRepaired(from, said.start());
    }

    /** "fifty of butter. Honey, no wait, …": what is taken back is the honey's. */
    private boolean isNextTopic(NameHit name, int line) {
        return name.inRecipe()
                && !name.lines().contains(line)
                && heard.takesAmounts(name)
                && heard.words.border(name.start())
                && !heard.isPassing(name);
    }

    private boolean isMore(SpokenQuantity said) {
        return heard.phrases.within(Kind.ADDS, said.start() - 2, said.end()) || additions.isMoreBehind(said.end());
    }

    /** "eighty grams … and then another forty": more of what was measured last. */
    private boolean adds(SpokenQuantity said, int line) {
        return latest(line).filter(last -> additions.isFraction(said, last)).isPresent() || isMoreOf(said, line);
    }

    private boolean isMoreOf(SpokenQuantity said, int line) {
        return isMore(said)
                && latest(line)
                        .filter(last -> said.start() - last.end() <= ADDS_REACH)
                        .filter(last -> heard.namesIn(last.end(), said.start()).stream()
                                .allMatch(name ->
                                        name.lines().contains(line) || !name.inRecipe() || heard.isPassing(name)))
                        .isPresent();
    }

    /** "the other half a teaspoon of the flakes": more of what already went in, not the first of something. */
    private boolean goesOn(SpokenQuantity said, NameHit name, int line) {
        return isMore(said)
                && mentions.last(line).isPresent()
                && (latest(line).isPresent() || name.start() >= said.end() || said.manner() != Manner.BARE);
    }

    /** The same amount again within a breath is said of the same thing. */
    private boolean confirms(SpokenQuantity said, int line) {
        return said.manner() != Manner.BARE
                && mentions.last(line)
                        .filter(last -> said.start() - last.end() <= CONFIRM_REACH && said.start() >= last.end())
                        .filter(last -> Optional.of(last.quantity()).equals(said.quantity()))
                        .isPresent();
    }

    /** "six eggs, one is for my breakfast, five go in". */
    private boolean goesIn(SpokenQuantity said, int line) {
        boolean in = heard.words.text(said.end() + 1).equals("in")
                && GOING.contains(heard.words.text(said.end()))
                && !heard.words.wall(said.end());
        return in
                && latest(line)
                        .filter(last -> said.start() - last.end() <= CONFIRM_REACH)
                        .filter(last -> heard.namesIn(last.end(), said.start()).stream()
                                .allMatch(name -> name.lines().contains(line)))
                        .isPresent();
    }

    /** "another one, so that's three": what the parts of the line before come to. */
    private boolean isSum(SpokenQuantity said, int line) {
        return latest(line)
                .filter(last -> last.role() == Role.ADDS && said.start() - last.end() <= CONFIRM_REACH)
                .flatMap(last -> mentions.committed(line))
                .filter(sum -> sum.amount().equals(said.amount()))
                .isPresent();
    }

    /** "fifteen in the dough and five on top, so twenty altogether". */
    private boolean isSumOfParts(SpokenQuantity said, int line) {
        List<Mention> own = mentions.of(line);
        if (own.size() < 2 || !additions.isTotal(said.start(), said.end())) {
            return false;
        }
        Mention last = own.get(own.size() - 1);
        Optional<RationalNumber> sum = last.quantity()
                .amount()
                .least()
                .flatMap(one ->
                        own.get(own.size() - 2).quantity().amount().least().map(one::add));
        return said.start() - last.end() <= CONFIRM_REACH
                && sum.equals(said.amount().least());
    }

    /** "fifty grams … we take only the half of it and the half is twenty five grams". */
    private boolean isShareSaidOutright(SpokenQuantity said, int line) {
        return heard.on(Mechanism.SHARES)
                && latest(line)
                        .filter(last -> heard.quantitiesIn(said.start() - SHARE_REACH, said.start()).stream()
                                .anyMatch(share -> share.manner() == Manner.SHARE && share.start() >= last.end()))
                        .isPresent();
    }

    /** "six hundred grams of that, so that's two twenty for you". */
    private boolean isPair(SpokenQuantity said, int line) {
        return latest(line)
                        .filter(last -> said.start() - last.end() <= REPAIR_REACH && said.start() >= last.end())
                        .filter(last -> heard.namesIn(last.end(), said.start()).isEmpty())
                        .isPresent()
                && (heard.phrases.within(Kind.VIEWER, said.end(), said.end() + WHOSE_REACH)
                        || heard.phrases.within(Kind.VIEWER, said.start() - WHOSE_REACH, said.start()));
    }
}
