package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A share whose ingredient was named before: "beat in half the milk, then the rest", "toast the nuts and chop a quarter
 * of them".
 *
 * @param start where it stands in the text
 * @param words "half", "the rest", "a little"
 * @param ofIt whether it is a share "of it" or "of them", not of what another share has left
 */
record BareShare(int start, String words, boolean ofIt) {

    private static final Cued REST = Cued.inAnyCase(
            "\\b(?<said>the\\h+rest|the\\h+remainder|the\\h+other\\h+half)(?=\\h*(?:[.,;:!)]|$|(?:for|to|in|into|over|on|onto|with|and|aside"
                    + "|if|until|as|through|together|back|by|later|when|while|before|after)\\b))");
    private static final Cued OF_IT = Cued.inAnyCase("\\b(?<said>" + Shares.FRACTION
            + "|most|some|a\\h+few|a\\h+little)(?:\\h+of\\h+(?:it|them|these)\\b|\\h+(?:back|aside)\\b)");
    private static final Cued NOT_USED = Cued.inAnyCase("\\b(?:need|discard)\\h+$");

    static List<BareShare> in(Wording text) {
        List<BareShare> shares = new ArrayList<>();
        collect(shares, REST, text, false);
        collect(shares, OF_IT, text, true);
        return shares;
    }

    private static void collect(List<BareShare> shares, Cued words, Wording text, boolean ofIt) {
        words.each(text, matcher -> {
            if (!NOT_USED.endsAt(text, matcher.start())) {
                String said = matcher.group("said").toLowerCase(Locale.ROOT).replaceAll("[\\h-]+", " ");
                shares.add(new BareShare(matcher.start(), said, ofIt));
            }
        });
    }

    Share of(IngredientLine line) {
        return Shares.fraction(words)
                .map(fraction -> new Share(line.quantity().map(whole -> whole.times(fraction)), words))
                .orElseGet(() -> new Share(Optional.empty(), Shares.plain(words)));
    }
}
