package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.compare.Mention.Role;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/** Gives each amount to the ingredient line that it was most likely said for, in time order. */
final class Attacher {

    private static final int REPAIR_REACH = 12;
    private static final double REPAIR_BONUS = 6;
    private static final int POINTING_REACH = 40;
    private static final int ADDS_REACH = 40;
    private static final double ADDS_BONUS = 3;
    private static final double USED_NAME = -2.2;
    private static final double COMPONENT_ON = 2.2;
    private static final double OTHER_COMPONENT = -1.2;
    private static final double STEP_ON = 1.2;

    /** Where an amount went: a line of the recipe, or a name that the recipe does not have. */
    record Place(SpokenQuantity said, NameHit name, int line, double score) {
        boolean inRecipe() {
            return line >= 0;
        }
    }

    private final Hearing heard;
    private final List<Mention> mentions = new ArrayList<>();
    private final List<Place> foreign = new ArrayList<>();
    private final List<SpokenQuantity> homeless = new ArrayList<>();
    private final Map<NameHit, SpokenQuantity> takenBy = new HashMap<>();

    Attacher(Hearing heard) {
        this.heard = heard;
    }

    /** Takes the amounts in the order of the stream. */
    void attach(SpokenQuantity said) {
        List<NameHit> shared = Sharing.names(said, heard);
        if (shared.size() > 1) {
            shared.forEach(name -> best(said, List.of(name), shared).ifPresent(this::keep));
            return;
        }
        Optional<Place> place = best(said, heard.names, shared).or(() -> pointedAt(said));
        if (place.isEmpty()) {
            homeless.add(said);
        } else {
            keep(place.get());
        }
    }

    private void keep(Place place) {
        takenBy.putIfAbsent(place.name(), place.said());
        if (!place.inRecipe()) {
            foreign.add(place);
            return;
        }
        Quantity quantity =
                Fit.inUnits(place.said(), heard.lines.get(place.line())).orElseThrow();
        boolean assumed = place.said().unit().isEmpty();
        mentions.add(new Mention(
                place.said().start(), place.said().end(), place.line(), quantity, assumed, role(place), place.score()));
    }

    private Optional<Place> best(SpokenQuantity said, List<NameHit> names, List<NameHit> shared) {
        Place best = null;
        for (NameHit name : names) {
            double position = shared.contains(name) ? Scoring.SURE + 1 : Scoring.position(said, name, heard);
            if (position == Double.NEGATIVE_INFINITY) {
                continue;
            }
            position += used(name, said);
            for (Place place : places(said, name, position)) {
                best = best == null || place.score() > best.score() ? place : best;
            }
        }
        return Optional.ofNullable(best).filter(place -> place.score() >= Scoring.ENOUGH);
    }

    /** "… two hundred and twenty grams of it": more said of what was measured last, however far back its name is. */
    private Optional<Place> pointedAt(SpokenQuantity said) {
        Optional<Mention> last = lastMention().filter(before -> said.start() - before.end() <= POINTING_REACH);
        if (last.isEmpty() || !Scoring.pointsBack(said, heard)) {
            return Optional.empty();
        }
        int line = last.get().line();
        boolean otherNamed = heard.names.stream()
                .anyMatch(name -> name.start() >= last.get().end()
                        && name.end() <= said.start()
                        && !name.lines().contains(line));
        NameHit name = new NameHit(said.end(), said.end(), Set.of(line), heard.words.text(said.end() + 1));
        Place place = new Place(said, name, line, Scoring.ENOUGH + Fit.of(said, heard.lines.get(line), heard));
        return otherNamed ? Optional.empty() : Optional.of(place).filter(one -> one.score() >= Scoring.ENOUGH);
    }

    private List<Place> places(SpokenQuantity said, NameHit name, double position) {
        if (!name.inRecipe()) {
            return List.of(new Place(said, name, -1, position + 0.5));
        }
        List<Place> places = new ArrayList<>();
        for (int line : name.lines()) {
            double score = position + lineScore(said, name, line) + repairBonus(said, line) + addsBonus(said, line);
            places.add(new Place(said, name, line, score));
        }
        return places;
    }

    /** A name that already has an amount seldom takes a second one, unless the second repairs or adds to the first. */
    private double used(NameHit name, SpokenQuantity said) {
        SpokenQuantity first = takenBy.get(name);
        if (first == null || name.start() >= said.end()) {
            return 0;
        }
        boolean follows = heard.phrases.within(Kind.REPAIR, first.end(), said.start())
                || heard.phrases.within(Kind.ADDS, said.start() - 2, said.end() + 1);
        return follows ? 0 : USED_NAME;
    }

    private double lineScore(SpokenQuantity said, NameHit name, int line) {
        int step = heard.stepAt(said.start());
        double score = Fit.of(said, heard.lines.get(line), heard);
        if (step > 0 && name.lines().size() > 1) {
            score += heard.stepIn(step, heard.componentOfLine.get(line)) ? COMPONENT_ON : OTHER_COMPONENT;
        }
        score += heard.stepUses(step, line) ? STEP_ON : 0;
        return score + coverage(name, line);
    }

    /** "icing sugar" is more surely the icing sugar than "sugar" is. */
    private double coverage(NameHit name, int line) {
        int own = Words.content(heard.lines.get(line).ingredient()).size();
        int heardWords = name.end() - name.start();
        return own == 0 ? 0 : 0.6 * Math.min(1.0, (double) heardWords / own);
    }

    /** "a hundred and fifty, sorry, a hundred and twenty five": the second is of what the first was of. */
    private double repairBonus(SpokenQuantity said, int line) {
        Optional<Mention> last = lastMention(line).filter(before -> before.end() <= said.start());
        if (last.isEmpty() || said.start() - last.get().end() > REPAIR_REACH) {
            return 0;
        }
        int from = heard.names.stream()
                .mapToInt(NameHit::end)
                .filter(end -> end > last.get().end() && end <= said.start())
                .max()
                .orElse(last.get().end());
        return heard.phrases.within(Kind.REPAIR, from, said.start()) ? REPAIR_BONUS : 0;
    }

    /** "eighty grams … and then another forty": more of what was measured last. */
    private double addsBonus(SpokenQuantity said, int line) {
        boolean more = heard.phrases.within(Kind.ADDS, said.start() - 2, said.start() + 1);
        return more
                        && lastMention()
                                .filter(last -> last.line() == line && said.start() - last.end() <= ADDS_REACH)
                                .isPresent()
                ? ADDS_BONUS
                : 0;
    }

    private Optional<Mention> lastMention(int line) {
        return mentions.stream().filter(mention -> mention.line() == line).reduce((first, second) -> second);
    }

    Optional<Mention> lastMention() {
        return mentions.isEmpty() ? Optional.empty() : Optional.of(mentions.get(mentions.size() - 1));
    }

    private Role role(Place place) {
        return role(place.said().start(), place.said().end(), place.line());
    }

    Role role(int start, int end, int line) {
        Optional<Mention> last = lastMention(line);
        if (last.isEmpty()) {
            return Role.STATES;
        }
        if (heard.phrases.within(Kind.ADDS, start - 3, end + 1)) {
            return Role.ADDS;
        }
        boolean near = start - last.get().end() <= 40;
        boolean repaired = near && heard.phrases.within(Kind.REPAIR, last.get().end(), start);
        boolean late = heard.phrases.within(Kind.LATE_REPAIR, start - 25, end + 12);
        return repaired || late ? Role.CORRECTS : Role.STATES;
    }

    /** All mentions so far, in time order. */
    List<Mention> mentions() {
        return mentions;
    }

    /** The mentions of each line, in time order. */
    Map<Integer, List<Mention>> mentionsByLine() {
        Map<Integer, List<Mention>> byLine = new LinkedHashMap<>();
        mentions.forEach(mention ->
                byLine.computeIfAbsent(mention.line(), k -> new ArrayList<>()).add(mention));
        return byLine;
    }

    List<Place> foreign() {
        return foreign;
    }

    List<SpokenQuantity> homeless() {
        return homeless;
    }
}
