package org.misecue.compare;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
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

    private static final double USED_NAME = -2.2;
    private static final int FAR = 28;
    private static final double COMPONENT_NAMED = 3.5;
    private static final double COMPONENT_ON = 2.2;
    private static final double OTHER_COMPONENT = -1.2;
    private static final double STEP_ON = 1.2;
    private static final double COVERED = 0.6;
    private static final RationalNumber MOST_PIECES = Rationals.of(100);

    private final Hearing heard;
    private final Repairs repairs;
    private final Continuations continuations;
    private final Descriptions descriptions;
    private final CarriedUnits units;
    private final Map<NameHit, SpokenQuantity> takenBy = new HashMap<>();

    LineScores(Hearing heard, Mentions mentions, CarriedUnits units) {
        this.heard = heard;
        this.repairs = new Repairs(heard);
        this.continuations = new Continuations(heard, mentions);
        this.descriptions = new Descriptions(heard, mentions);
        this.units = units;
    }

    /** Notes that a name has its amount. */
    void taken(NameHit name, SpokenQuantity said) {
        takenBy.putIfAbsent(name, said);
    }

    /** "a hundred butter". */
    boolean isTakenByNumberBefore(NameHit name) {
        SpokenQuantity by = takenBy.get(name);
        return by != null && by.end() == name.start();
    }

    /** Whether the number can't be one of the line, however near the name is. */
    boolean isOutOfQuestion(SpokenQuantity said, NameHit name, int line) {
        return isPronounOne(said, name, line) || countsPieces(said, name, line);
    }

    /**
     * @param mayGoOn whether the amount may repair or add to what was measured last, no other name being right beside it
     */
    double of(SpokenQuantity said, NameHit name, int line, boolean mayGoOn) {
        double mostLikely = name.lines().stream()
                .mapToDouble(other -> component(said, heard.stepAt(said.start()), other))
                .max()
                .orElse(0);
        double score = lineScore(said, name, line) - mostLikely;
        boolean goesOn = mayGoOn && !isOfOtherPart(said, line);
        return score + continuations.of(said, name, line, goesOn) + descriptions.of(said, name, line);
    }

    /** "now the sauce, and brown sugar a hundred and twenty": nothing of the pudding is said again. */
    private boolean isOfOtherPart(SpokenQuantity said, int line) {
        OptionalInt named = heard.locators.around(said.start(), said.end());
        return named.isPresent() && named.getAsInt() != heard.componentOfLine.get(line);
    }

    /** Whether the amount goes on with the line that was measured last. */
    boolean goesOn(SpokenQuantity said, int line) {
        return continuations.goesOn(said, line);
    }

    /** A name that already has an amount seldom takes a second one, unless the second repairs or adds to the first. */
    double used(NameHit name, SpokenQuantity said) {
        SpokenQuantity first = takenBy.get(name);
        if (first == null || name.start() >= said.end()) {
            return 0;
        }
        boolean follows = repairs.isRepaired(first.end(), said.start())
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

    /** "about seventy cherries", where they are weighed: so many pieces, not so many grams. */
    private boolean countsPieces(SpokenQuantity said, NameHit name, int line) {
        boolean weighed = heard.lines
                .get(line)
                .quantity()
                .filter(written -> written.dimension() == Dimension.MASS)
                .isPresent();
        boolean few = said.isBelow(MOST_PIECES);
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
        return own == 0 ? 0 : COVERED * Math.min(1.0, (double) heardWords / own);
    }
}
