package org.misecue.publish;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.misecue.align.Alignment;
import org.misecue.compare.Comparison;
import org.misecue.offers.Offer;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.scale.ScaledRecipe;

/**
 * Everything that one publication is made from, whatever its form.
 *
 * @param batch the recipe in the size that viewers are to bake: as published, not as filmed
 * @param comparison what was said on camera; empty where there is no narration
 * @param alignment which step is on when, for the chapters; empty where there is no narration
 * @param offers substitutions offered on camera, in the order in which they were
 * @param pantry what is known of the ingredients
 * @param film the narrations on the clock that viewers see; empty where it is not told which those are
 * @param web where it is published
 * @param draft why it must not go out yet; empty for what may
 */
public record Edition(
        ScaledRecipe batch,
        Optional<Comparison> comparison,
        Optional<Alignment> alignment,
        List<Offer> offers,
        Pantry pantry,
        List<String> film,
        WebData web,
        Optional<String> draft) {

    /** A recipe of which nobody has spoken yet. */
    public static Edition of(ScaledRecipe batch, Pantry pantry) {
        return new Edition(
                batch,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                pantry,
                List.of(),
                WebData.in(Locale.UK),
                Optional.empty());
    }

    public Edition with(Comparison known) {
        return new Edition(batch, Optional.of(known), alignment, offers, pantry, film, web, draft);
    }

    public Edition with(Alignment known) {
        return new Edition(batch, comparison, Optional.of(known), offers, pantry, film, web, draft);
    }

    public Edition with(List<Offer> made) {
        return new Edition(batch, comparison, alignment, made, pantry, film, web, draft);
    }

    public Edition with(WebData known) {
        return new Edition(batch, comparison, alignment, offers, pantry, film, known, draft);
    }

    public Edition asDraft(Optional<String> why) {
        return new Edition(batch, comparison, alignment, offers, pantry, film, web, why);
    }

    Recipe recipe() {
        return batch.recipe();
    }

    /** The chapters of the film; none where nobody has spoken. */
    public Chapters chapters() {
        return alignment.map(known -> Chapters.of(recipe(), known, film)).orElse(Chapters.none());
    }
}
