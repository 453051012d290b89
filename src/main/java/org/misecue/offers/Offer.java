package org.misecue.offers;

import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.misecue.narration.Moment;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.Words;

/**
 * A substitution that was offered to viewers on camera: "if you can't get buttermilk, use two hundred of yoghurt".
 *
 * @param instead the recipe's own ingredient that it may take the place of, as the recipe names it
 * @param use what may be taken instead
 * @param amount how much of it, where that was said
 * @param moment where the words begin
 * @param quote the words, as the recogniser wrote them
 * @param sameAmount whether the amount was told as "the same" as written
 * @param with what goes with it, as heard: "with a squeeze of lemon"; empty where nothing does
 * @param brings the allergens of what may be taken, and of what goes with it
 */
public record Offer(
        String instead,
        String use,
        Optional<Quantity> amount,
        Moment moment,
        String quote,
        boolean sameAmount,
        String with,
        Brings brings) {

    /** An offer of which nothing more is known. */
    public Offer(String instead, String use, Optional<Quantity> amount, Moment moment, String quote) {
        this(instead, use, amount, moment, quote, false, "", Brings.UNKNOWN);
    }

    /**
     * Whether the words name what it may take the place of, by a word that what is offered does not share; otherwise that
     * was guessed, and nobody should publish it unheard.
     */
    public boolean isNamed() {
        Set<String> own = new HashSet<>(Words.content(instead));
        own.removeAll(Words.content(use));
        Set<String> heard = new HashSet<>(Words.content(quote));
        String joined = quote.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
        return own.stream().anyMatch(word -> heard.contains(word) || word.length() > 5 && joined.contains(word));
    }
}
