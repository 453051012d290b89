package org.misecue.compare;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * How likely an amount was said for a line of the recipe, on top of where its name stands: its measure and size, the step
 * and the part that are on, what was said before, and how the line is described. The figures were set by ear on sentences
 * of our own; the order between them matters, not their size.
 */
final class LineScores {

    private static final int REPAIR_REACH = 12;
    private static final double REPAIR_BONUS = 6;
    private static final int ADDS_REACH = 40;
    private static final double ADDS_BONUS = 4;
    private static final double USED_NAME = -2.2;
    private static final int FAR = 28;
    private static final double COMPONENT_NAMED = 3.5;
    private static final double COMPONENT_ON = 2.2;
    private static final double OTHER_COMPONENT = -1.2;
    private static final double STEP_ON = 1.2;
    private static final double CONFIRMS = 3;
    private static final double GOES_ON = 2.5;
    private static final int SHARE_REACH = 10;
    private static final double DESCRIBED = 1.6;
    private static final double MOST_DESCRIBED = 3;
    private static final double KNOWN_OF_IT = 5;
    private static final int DESCRIBED_BEFORE = 4;
    private static final int DESCRIBED_AFTER = 4;
    private static final int CONFIRM_REACH = 20;

    private final Hearing heard;
    private final Roles roles;
    private final Mentions mentions;
    private final CarriedUnits units;
    private final Map<NameHit, SpokenQuantity> takenBy = new HashMap<>();

    LineScores(Hearing heard, Roles roles, Mentions mentions, CarriedUnits units) {
        this.heard = heard;
        this.roles = roles;
        this.mentions = mentions;
        this.units = units;
    }

    /** Notes that a name has its amount. */
    void taken(NameHit name, SpokenQuantity said) {
        takenBy.putIfAbsent(name, said);
    }

    /** Whether the number can't be one of the line, however near the name is. */
    boolean isOutOfQuestion(SpokenQuantity said, NameHit name, int line) {
        return isPronounOne(said, name, line) || countsPieces(said, name, line);
    }

    /**
     * @param mayGoOn whether the amount may repair or add to what was measured last, no other name being right beside it
     */
    double of(SpokenQuantity said, NameHit name, int line, boolean mayGoOn) {
        boolean passing = heard.isPassing(name);
        double mostLikely = name.lines().stream()
                .mapToDouble(other -> component(said, heard.stepAt(said.start()), other))
                .max()
                .orElse(0);
        double score = lineScore(said, name, line) - mostLikely;
        score += mayGoOn ? repairBonus(said, line) + addsBonus(said, line) : 0;
        score += mayGoOn && !passing && goesOn(said, name, line) ? GOES_ON : 0;
        score += mayGoOn && confirms(said, line) ? CONFIRMS : 0;
        score += isSumOfParts(said, line) ? REPAIR_BONUS : 0;
        score += isShareSaidOutright(said, line) ? GOES_ON - USED_NAME : 0;
        score += isPair(said, line) ? CONFIRMS : 0;
        return score + (name.lines().size() > 1 && !passing ? describedAs(said, name, line) : 0);
    }

    /** A name that already has an amount seldom takes a second one, unless the second repairs or adds to the first. */
    double used(NameHit name, SpokenQuantity said) {
        SpokenQuantity first = takenBy.get(name);
        if (first == null || name.start() >= said.end()) {
            return 0;
        }
        boolean follows = roles.isRepaired(first.end(), said.start())
                || heard.phrases.within(Kind.ADDS, said.start() - 2, said.end() + 1);
        boolean far = said.start() - name.end() > FAR;
        return follows && !far ? 0 : follows || !far ? USED_NAME : 2 * USED_NAME;
    }

    private double lineScore(SpokenQuantity said, NameHit name, int line) {
        int step = heard.stepAt(said.start());
        double score = Fit.of(said, heard.lines.get(line), units.of(said, line), heard) + component(said, step, line);
        score += heard.stepUses(step, line) ? STEP_ON : 0;
        return score + coverage(name, line);
    }

    /** Which of several lines of one name: by the part that the speaker names, or by the step that is on. */
    double component(int at, int line) {
        return component(at, at + 1, heard.stepAt(at), line);
    }

    private double component(SpokenQuantity said, int step, int line) {
        return component(said.start(), said.end(), step, line);
    }

    private double component(int start, int end, int step, int line) {
        int own = heard.componentOfLine.get(line);
        OptionalInt named = heard.locators.around(start, end);
        double score = 0;
        if (named.isPresent()) {
            score += named.getAsInt() == own ? COMPONENT_NAMED : -COMPONENT_NAMED;
        }
        if (step > 0) {
            score += heard.stepIn(step, own) ? COMPONENT_ON : OTHER_COMPONENT;
        }
        return score;
    }

    /** "fifty grams … we take only the half of it and the half is twenty five grams". */
    private boolean isShareSaidOutright(SpokenQuantity said, int line) {
        return mentions.last().filter(last -> last.line() == line).isPresent()
                && heard.quantitiesIn(said.start() - SHARE_REACH, said.start()).stream()
                        .anyMatch(share -> share.manner() == Manner.SHARE
                                && share.start() >= mentions.last().get().end());
    }

    /** "sugar, the dark one": words of one line and not of the others, said about the name, or an amount known of it. */
    private double describedAs(SpokenQuantity said, NameHit name, int line) {
        Set<String> own = new HashSet<>(describing(heard.lines.get(line)));
        name.lines().stream()
                .filter(other -> other != line)
                .forEach(other -> own.removeAll(describing(heard.lines.get(other))));
        int before = heard.quantityBefore(said.start()).map(SpokenQuantity::end).orElse(0);
        int from = Math.max(before, Math.min(name.start(), said.start()) - DESCRIBED_BEFORE);
        int to = Math.max(name.end(), said.end()) + DESCRIBED_AFTER;
        double score = 0;
        for (int at = Math.max(0, from); at < to && score < MOST_DESCRIBED; at++) {
            score += own.contains(Words.singular(heard.words.text(at))) ? DESCRIBED : 0;
        }
        boolean known = said.isAtLeast(Rationals.of(20));
        boolean again = known
                && mentions.of(line).stream()
                        .anyMatch(mention -> mention.quantity().amount().equals(said.amount()));
        return score + (again ? KNOWN_OF_IT : 0);
    }

    /** What it is, and what has been done to it: "chopped hazelnuts" are not the ground ones. */
    private static Set<String> describing(IngredientLine line) {
        return Words.content(line.ingredient() + " " + line.preparation());
    }

    /** "about seventy cherries", where they are weighed: so many pieces, not so many grams. */
    private boolean countsPieces(SpokenQuantity said, NameHit name, int line) {
        boolean weighed = heard.lines
                .get(line)
                .quantity()
                .filter(written -> written.dimension() == Dimension.MASS)
                .isPresent();
        boolean few = said.isBelow(Rationals.of(100));
        return weighed && few && said.manner() == Manner.BARE && name.start() == said.end() && isPlural(name.name());
    }

    private static boolean isPlural(String name) {
        return name.endsWith("s")
                && !name.endsWith("ss")
                && !Words.singular(name).equals(name);
    }

    /** "the funny one, bicarb": a one right before what is not counted. */
    private boolean isPronounOne(SpokenQuantity said, NameHit name, int line) {
        return said.manner() == Manner.BARE
                && said.amount().least().equals(Optional.of(Rationals.ONE))
                && name.start() == said.end()
                && heard.lines
                        .get(line)
                        .quantity()
                        .filter(written -> written.unit() == Unit.EACH)
                        .isEmpty();
    }

    /** "icing sugar" is more surely the icing sugar than "sugar" is. */
    private double coverage(NameHit name, int line) {
        int own = Words.content(heard.lines.get(line).ingredient()).size();
        int heardWords = name.end() - name.start();
        return own == 0 ? 0 : 0.6 * Math.min(1.0, (double) heardWords / own);
    }

    /** "the other half a teaspoon of the flakes": more of what already went in, not the first of something. */
    private boolean goesOn(SpokenQuantity said, NameHit name, int line) {
        boolean latest = mentions.last().filter(last -> last.line() == line).isPresent();
        return heard.phrases.within(Kind.ADDS, said.start() - 2, said.end())
                && mentions.last(line).isPresent()
                && (latest || name.start() >= said.end() || said.manner() != Manner.BARE);
    }

    /** The same amount again within a breath is said of the same thing. */
    private boolean confirms(SpokenQuantity said, int line) {
        return isSum(said, line)
                || said.manner() != Manner.BARE
                        && mentions.last(line)
                                .filter(last ->
                                        said.start() - last.end() <= CONFIRM_REACH && said.start() >= last.end())
                                .filter(last -> Optional.of(last.quantity()).equals(said.quantity()))
                                .isPresent();
    }

    /** "fifteen in the dough and five on top, so twenty altogether". */
    private boolean isSumOfParts(SpokenQuantity said, int line) {
        List<Mention> own = mentions.of(line);
        if (own.size() < 2 || !roles.isTotal(said.start(), said.end())) {
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

    /** "another one, so that's three": what the parts of the line before come to. */
    private boolean isSum(SpokenQuantity said, int line) {
        return mentions.last()
                .filter(last -> last.line() == line && last.role() == Role.ADDS)
                .filter(last -> said.start() - last.end() <= CONFIRM_REACH)
                .flatMap(last -> mentions.committed(line))
                .filter(sum -> sum.amount().equals(said.amount()))
                .isPresent();
    }

    /** "a hundred and fifty, sorry, a hundred and twenty five": the second is of what the first was of. */
    private double repairBonus(SpokenQuantity said, int line) {
        Optional<Mention> last = mentions.last(line).filter(before -> before.end() <= said.start());
        if (last.isEmpty() || said.start() - last.get().end() > 2 * REPAIR_REACH) {
            return 0;
        }
        int pending = Roles.repairedFrom(mentions.of(line));
        List<NameHit> since = heard.namesIn(last.get().end(), said.start()).stream()
                .filter(name -> name.end() <= said.start())
                .toList();
        if (since.stream().anyMatch(name -> isNextTopic(name, line))) {
            return 0;
        }
        int from = since.stream().mapToInt(NameHit::end).max().orElse(pending);
        boolean readOff = mentions.last()
                .filter(mention -> mention.line() == line)
                .filter(mention -> roles.isReadOff(said, mention))
                .isPresent();
        return readOff || roles.isRepaired(from, said.start()) ? REPAIR_BONUS : 0;
    }

    /** "fifty of butter. Honey, no wait, …": what is taken back is the honey's. */
    private boolean isNextTopic(NameHit name, int line) {
        return name.inRecipe()
                && !name.lines().contains(line)
                && heard.takesAmounts(name)
                && heard.words.border(name.start())
                && !heard.isPassing(name);
    }

    /** "eighty grams … and then another forty": more of what was measured last. */
    private double addsBonus(SpokenQuantity said, int line) {
        boolean more = heard.phrases.within(Kind.ADDS, said.start() - 2, said.end());
        return more
                        && mentions.last()
                                .filter(last -> last.line() == line && said.start() - last.end() <= ADDS_REACH)
                                .filter(last -> heard.namesIn(last.end(), said.start()).stream()
                                        .allMatch(name -> name.lines().contains(line)
                                                || !name.inRecipe()
                                                || heard.isPassing(name)))
                                .isPresent()
                ? ADDS_BONUS
                : 0;
    }

    /** "six hundred grams of that, so that's two twenty for you". */
    private boolean isPair(SpokenQuantity said, int line) {
        return mentions.last()
                        .filter(last -> last.line() == line)
                        .filter(last -> said.start() - last.end() <= REPAIR_REACH && said.start() >= last.end())
                        .filter(last -> heard.namesIn(last.end(), said.start()).isEmpty())
                        .isPresent()
                && (heard.phrases.within(Kind.VIEWER, said.end(), said.end() + 4)
                        || heard.phrases.within(Kind.VIEWER, said.start() - 4, said.start()));
    }
}
