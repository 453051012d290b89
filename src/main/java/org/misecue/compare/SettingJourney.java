package org.misecue.compare;

import java.util.List;
import java.util.Optional;
import org.misecue.compare.Journey.Stop;
import org.misecue.compare.Settled.Said;
import org.misecue.compare.Trail.Passage;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Setting;
import org.misecue.spoken.SpokenQuantity.Manner;

/** What was heard for an oven, a time, a tin or a yield. These are told by their units, so there are no scores. */
final class SettingJourney {

    private final SettingVerdict verdict;
    private final Setting setting;
    private final Hearing heard;
    private final Fates fates;

    SettingJourney(SettingVerdict verdict, Hearing heard, Fates fates) {
        this.verdict = verdict;
        this.setting = verdict.setting();
        this.heard = heard;
        this.fates = fates;
    }

    List<Stop> stops() {
        return fates.of(setting).stream()
                .map(said -> new Stop(evidence(said), Telling.sentence(heardAs(said) + "; " + effect(said))))
                .toList();
    }

    private Evidence evidence(Said said) {
        return heard.evidence(said.words().start(), said.words().end(), Optional.of(said.quantity()));
    }

    private static String heardAs(Said said) {
        boolean bare = said.words().manner() == Manner.BARE;
        return "heard as " + QuantityWriter.text(said.quantity()) + (bare ? ", only the number being said" : "");
    }

    private String effect(Said said) {
        Optional<Quantity> counted = verdict.evidence().stream()
                .filter(one -> one.moment().equals(evidence(said).moment()))
                .findFirst()
                .flatMap(Evidence::quantity);
        if (counted.isEmpty()) {
            return "does not stand in the end, because it is corrected or put more plainly elsewhere";
        }
        return counted.get().equals(said.quantity())
                ? "it stands"
                : "with what was said before it makes " + QuantityWriter.text(counted.get());
    }

    List<String> outcome() {
        return List.of(verdict.reason(), "Confidence " + verdict.confidence().percent() + " of 100.");
    }

    /** Figures of the same kind that went elsewhere, while its step was on. */
    List<Stop> nearBy() {
        return heard.trail.passages().stream()
                .filter(this::isOfItsKind)
                .filter(passage -> setting.step() == 0 || heard.stepAt(passage.start()) == setting.step())
                .filter(passage -> fates.of(setting).stream()
                        .noneMatch(said -> said.words().start() == passage.start()))
                .map(passage -> fates.stop(passage, ""))
                .toList();
    }

    private boolean isOfItsKind(Passage passage) {
        Dimension dimension = setting.quantity().dimension();
        return dimension != Dimension.COUNT
                && passage.said()
                        .filter(said -> said.unit().map(Unit::dimension).equals(Optional.of(dimension))
                                || (said.manner() == Manner.HEAT && dimension == Dimension.TEMPERATURE))
                        .isPresent();
    }
}
