package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A share whose ingredient was named before: "beat in half the milk, then the rest", "toast the nuts and chop a quarter
 * of them".
 *
 * @param start where it stands in the text
 * @param words "half", "the rest", "a little"
 * @param ofIt whether it is a share "of it" or "of them", not of what another share has left
 */
record BareShare(int start, String words, boolean ofIt) {

    private static final Pattern REST = Pattern.compile(
            "\\b(?<said>the\\h+rest|the\\h+remainder|the\\h+other\\h+half)(?=\\h*(?:[.,;:!)]|$|(?:for|to|in|into|over|on|onto|with|and|aside"
                    + "|if|until|as|through|together|back|by|later|when|while|before|after)\\b))",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern OF_IT = Pattern.compile(
            "\\b(?<said>" + Shares.FRACTION
                    + "|most|some|a\\h+few|a\\h+little)(?:\\h+of\\h+(?:it|them|these)\\b|\\h+(?:back|aside)\\b)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NOT_USED = Pattern.compile("\\b(?:need|discard)\\h+$", Pattern.CASE_INSENSITIVE);

    static List<BareShare> in(String text) {
        List<BareShare> shares = new ArrayList<>();
        if (Shares.CUES.standIn(text)) {
            collect(shares, REST.matcher(text), text, false);
            collect(shares, OF_IT.matcher(text), text, true);
        }
        return shares;
    }

    private static void collect(List<BareShare> shares, Matcher matcher, String text, boolean ofIt) {
        while (matcher.find()) {
            if (!Back.matches(NOT_USED, text, matcher.start())) {
                String said = matcher.group("said").toLowerCase(Locale.ROOT).replaceAll("[\\h-]+", " ");
                shares.add(new BareShare(matcher.start(), said, ofIt));
            }
        }
    }

    Share of(IngredientLine line) {
        return Shares.fraction(words)
                .map(fraction -> new Share(line.quantity().map(whole -> whole.times(fraction)), words))
                .orElseGet(() -> new Share(Optional.empty(), Shares.plain(words)));
    }
}
