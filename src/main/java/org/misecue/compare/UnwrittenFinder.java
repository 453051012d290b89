package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;

/** Ingredients that went in with a stated amount and that no line of the recipe has. */
final class UnwrittenFinder {

    private static final Set<String> TOOLS =
            Words.set("scoop cutter dish tin sheet tray spoon jar bag cutters scoops mould case cases");
    private static final int NEAR = 4;
    private static final int POSSIBLE_REACH = 4;

    private final Hearing heard;

    UnwrittenFinder(Hearing heard) {
        this.heard = heard;
    }

    List<Unwritten> find(List<Attacher.Place> foreign, List<SpokenQuantity> homeless) {
        List<Unwritten> found = new ArrayList<>();
        for (Attacher.Place place : foreign) {
            if (isAdded(place)) {
                add(found, UnknownName.whole(place.name(), place.said(), heard), place.said(), place.score());
            }
        }
        for (SpokenQuantity said : homeless) {
            // A name that neither recipe nor pantry knows may be one of theirs, misheard.
            nameAfter(said).ifPresent(name -> add(found, name, said, Scoring.ENOUGH));
        }
        return List.copyOf(found);
    }

    /** "a teaspoon of nutmeg", "… elderflower cordial, a teaspoon of that": measured, and not only spoken of. */
    private boolean isAdded(Attacher.Place place) {
        SpokenQuantity said = place.said();
        NameHit name = place.name();
        if (heard.isPassing(name)) {
            return false;
        }
        if (TOOLS.contains(heard.words.text(name.end()))) {
            return false;
        }
        boolean unwritten = Scoring.saysUnwritten(name, said, heard);
        if (!unwritten && (heard.isBeforeAllSteps(said.start()) || isOnlyPossible(said))) {
            return false;
        }
        boolean measured = said.manner() == Manner.MEASURED;
        if (name.start() >= said.end()) {
            boolean of = heard.words.text(said.end()).equals("of");
            return measured || name.start() == said.end() || (of && said.manner() == Manner.SPOONS && unwritten);
        }
        boolean near = said.start() - name.end() <= NEAR;
        return measured && (near || Scoring.pointsBack(said, heard) || unwritten);
    }

    /** "then puffed rice, you'd want a hundred grams", "you can put a teaspoon of blueberry powder". */
    private boolean isOnlyPossible(SpokenQuantity said) {
        return heard.phrases.within(Kind.WOULD, said.start() - POSSIBLE_REACH, said.start())
                || heard.words
                        .normal(said.start() - POSSIBLE_REACH, said.start())
                        .matches(".*\\byou (can|could|may|might)\\b.*");
    }

    private void add(List<Unwritten> found, String name, SpokenQuantity said, double score) {
        Quantity quantity = said.quantity().orElse(new Quantity(said.amount(), Unit.EACH));
        boolean food = quantity.dimension() == Dimension.MASS
                || quantity.dimension() == Dimension.VOLUME
                || quantity.dimension() == Dimension.COUNT;
        food &= !UnknownName.isNoFood(name);
        boolean again = found.stream().anyMatch(one -> one.ingredient().equals(name));
        if (food && !again) {
            found.add(new Unwritten(
                    name,
                    quantity,
                    Certainty.of(Grounds.of(score, said)),
                    List.of(heard.evidence(said.start(), said.end(), Optional.of(quantity)))));
        }
    }

    /** "a teaspoon of …": the words after "of", if they can name food and none of the recipe's. */
    private Optional<String> nameAfter(SpokenQuantity said) {
        boolean known = heard.namesIn(said.end(), said.end() + 1 + UnknownName.LONGEST).stream()
                .anyMatch(NameHit::inRecipe);
        return known || heard.isBeforeAllSteps(said.start()) ? Optional.empty() : UnknownName.behind(said, heard);
    }
}
