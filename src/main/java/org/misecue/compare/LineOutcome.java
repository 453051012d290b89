package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.misecue.compare.Mention.Role;
import org.misecue.compare.Trail.Ruling;
import org.misecue.narration.Clock;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import tech.units.indriya.function.RationalNumber;

/** From what was heard for a line to its verdict, told in the order in which it was worked out. */
final class LineOutcome {

    private static final int NAMED_AT_MOST = 5;

    private final int line;
    private final Hearing heard;
    private final Fates fates;
    private final RationalNumber factor;

    LineOutcome(int line, Hearing heard, Fates fates, RationalNumber factor) {
        this.line = line;
        this.heard = heard;
        this.fates = fates;
        this.factor = factor;
    }

    List<String> of(LineVerdict verdict) {
        Optional<Ruling> ruling = heard.trail.ruling(line);
        List<String> outcome = new ArrayList<>();
        if (ruling.isEmpty()) {
            outcome.add(named());
            outcome.add(confidence(verdict) + silence());
            return outcome;
        }
        if (ruling.get().counted().size() > 1) {
            outcome.add(stands(ruling.get(), verdict.verdict()));
        }
        batch().ifPresent(outcome::add);
        held(verdict).ifPresent(outcome::add);
        outcome.add(confidence(verdict) + why(ruling.get().grounds()));
        return outcome;
    }

    private String named() {
        List<NameHit> hits =
                heard.names.stream().filter(name -> name.lines().contains(line)).toList();
        if (hits.isEmpty()) {
            return "Its name is never heard.";
        }
        String times = hits.stream()
                .limit(NAMED_AT_MOST)
                .map(name -> Clock.hms(heard.words.moment(name.start()).at()) + " (“" + name.name() + "”)")
                .collect(Collectors.joining(", "));
        if (!fates.of(line).isEmpty()) {
            return "Nothing that was heard of it is near enough to what is written.";
        }
        return "It is named at " + times + (hits.size() > NAMED_AT_MOST ? " and later" : "")
                + ", and no amount was given to it.";
    }

    private String stands(Ruling ruling, Verdict verdict) {
        List<Ledger.Entry> standing = ruling.standing();
        String amounts = Telling.all(standing);
        if (standing.size() > 1 && verdict != Verdict.DIFFERS) {
            return "In the end " + amounts + " stand, and the last of them counts, being what is written.";
        }
        if (standing.size() > 1) {
            return "In the end " + amounts + " stand and none is taken back: that differs, whatever is written.";
        }
        boolean summed = standing.get(0).mentions().stream().anyMatch(mention -> mention.role() == Role.ADDS)
                || Ledger.fold(ruling.counted(), heard.household, heard.ingredientOfLine.get(line))
                                .size()
                        > 1;
        return "In the end " + amounts + " stands" + (summed ? ", the parts added up." : ".");
    }

    private Optional<String> batch() {
        if (!factor.equals(Rationals.ONE)) {
            return Optional.of("The speaker makes " + times(factor)
                    + " the written batch, so what counts is what viewers are told for the written one.");
        }
        RationalNumber announced = heard.on(Mechanism.BATCH_TALK) ? Announcement.of(heard) : Rationals.ONE;
        return announced.equals(Rationals.ONE)
                ? Optional.empty()
                : Optional.of("The speaker announces " + times(announced)
                        + " the written batch, but most amounts are of the written size, so nothing is divided.");
    }

    private static String times(RationalNumber factor) {
        return factor.compareTo(Rationals.ONE) < 0
                ? QuantityWriter.number(factor, Unit.EACH) + " of"
                : QuantityWriter.number(factor, Unit.EACH) + " times";
    }

    /** The comparison that decided; none where two amounts contradict each other. */
    private Optional<String> held(LineVerdict verdict) {
        return heard.trail.held(line).stream()
                .filter(held -> held.verdict() == verdict.verdict())
                .findFirst()
                .map(held -> Tolerance.sentence(held, heard.household));
    }

    private static String confidence(LineVerdict verdict) {
        return "Confidence " + verdict.confidence().percent() + " of 100";
    }

    private static String why(Grounds grounds) {
        List<String> doubts = new ArrayList<>();
        if (grounds.score() < Scoring.SURE) {
            doubts.add("the name is not near enough to be sure (" + Telling.score(grounds.score()) + ")");
        }
        grounds.doubts().stream().sorted().map(Doubt::words).forEach(doubts::add);
        return doubts.isEmpty() ? ": nothing speaks against it." : ", because " + String.join(" and ", doubts) + ".";
    }

    private String silence() {
        int strays = Grounds.strays(line, fates.homeless(), heard).size();
        return strays == 0
                ? ": silence is never quite sure, as an amount may have been misheard."
                : ", because an amount that would fit was heard near its name and given to nothing.";
    }
}
