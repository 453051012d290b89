package org.misecue.claims;

import java.util.List;
import java.util.Optional;
import org.misecue.narration.Moment;
import org.misecue.notice.Place;
import org.misecue.recipe.IngredientLine;

/**
 * A claim that somebody makes to viewers, and what is known against it.
 *
 * @param key the same in every run over the same claim: what is denied, of what, and where it is said, shown or written
 * @param words as they were put: "dairy free"
 * @param denies what it denies, by its key in {@code denials.csv}: "dairy"
 * @param about the dish, a part of it or one ingredient
 * @param moment when it is first made; empty for what is written
 * @param again the later moments of the same claim in the same source, in order
 * @param place the file, and the line of what is written
 * @param quote the words with some of their surroundings
 * @param doubtful whether the recogniser or the reading may have misheard it
 * @param reason one or more sentences for a person; never says that the claim holds
 * @param because the ingredient lines that the ruling rests on
 * @param caution what law and labels say to such words; empty where nothing is known
 */
public record Claim(
        String key,
        String words,
        String denies,
        Subject about,
        Via via,
        Optional<Moment> moment,
        List<Moment> again,
        Place place,
        String quote,
        boolean doubtful,
        Ruling ruling,
        String reason,
        List<IngredientLine> because,
        String caution) {}
