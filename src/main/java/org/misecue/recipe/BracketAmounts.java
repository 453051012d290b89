package org.misecue.recipe;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Packings;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.WrittenQuantity;

/**
 * Second amounts aside, mostly in brackets behind a name: "3 eggs (about 150 g)", "1 tin condensed milk (397 g)".
 *
 * @param first the first of them; empty where there is none
 * @param each whether it says what one piece weighs
 * @param rest the text without them
 */
record BracketAmounts(Optional<Quantity> first, boolean each, String rest) {

    private static final Cued BRACKET = Cued.of("\\h*\\(([^()]*)\\)");
    /** Between commas a second amount is as much aside as in brackets: "1 bar of chocolate, about 100 g, chopped". */
    private static final Cued COMMAS = Cued.of(",\\h*([^,;()]*)(?=[,;]|$)");

    private static final Pattern PIECE =
            Pattern.compile("[;,]\\h+|\\h+or\\h+(?=[\\d½¼¾⅓⅔⅛])|(?<=\\p{L})\\h*/\\h*(?=\\d)");
    private static final Cued FILLED =
            Cued.inAnyCase("^(?:heaped|heaping|rounded|level|scant|generous)\\h+(?=[\\d½¼¾⅓⅔⅛])");
    private static final Pattern OF_EACH = Pattern.compile(".*\\h(?:each|apiece)\\h*", Pattern.CASE_INSENSITIVE);
    private static final Cued WEIGHED_HOW = Cued.inAnyCase(
            "\\h+(?:in total|total|in all|altogether|each|apiece|without (?:the )?(?:shells?|stones?|skins?|peel)"
                    + "|(?:(?:un)?(?:peeled|shelled)|stoned|pitted|prepared|drained|trimmed|net|total)?\\h*weight"
                    + "|(?:un)?(?:peeled|shelled))$");

    static BracketAmounts in(String line, QuantityReader quantities) {
        Wording wording = Wording.of(line);
        boolean aside = COMMAS.mayStandIn(wording);
        if (!aside && !BRACKET.mayStandIn(wording)) {
            return new BracketAmounts(Optional.empty(), false, line);
        }
        String text = !aside
                ? line
                : COMMAS.pattern()
                        .matcher(line)
                        .replaceAll(found -> Matcher.quoteReplacement(
                                amount(found.group(1), quantities).isPresent()
                                        ? " (" + found.group(1) + ")"
                                        : found.group()));
        List<String> amounts = BRACKET.pattern()
                .matcher(text)
                .results()
                .flatMap(bracket -> Arrays.stream(PIECE.split(bracket.group(1), -1)))
                .filter(piece -> amount(piece, quantities).isPresent())
                .toList();
        String rest = BRACKET.pattern()
                .matcher(text)
                .replaceAll(bracket -> Matcher.quoteReplacement(without(bracket.group(1), quantities)));
        return amounts.isEmpty()
                ? new BracketAmounts(Optional.empty(), false, rest)
                : new BracketAmounts(
                        amount(amounts.get(0), quantities),
                        OF_EACH.matcher(amounts.get(0)).matches(),
                        rest);
    }

    /** What so many packs hold in all, where that is what the bracket says. */
    Optional<Quantity> content(WrittenQuantity packs) {
        return first.map(quantity -> each ? quantity.times(packs.count().orElse(Rationals.ONE)) : quantity);
    }

    private static String without(String inner, QuantityReader quantities) {
        List<String> kept = Arrays.stream(PIECE.split(inner, -1))
                .filter(piece -> amount(piece, quantities).isEmpty() && !isPack(piece, quantities))
                .toList();
        return kept.isEmpty() ? "" : " (" + String.join(", ", kept) + ")";
    }

    /** "2¼ tsp (1 packet)": the same in packs, whose size is not said. */
    private static boolean isPack(String piece, QuantityReader quantities) {
        String plain = piece.strip();
        return quantities
                .read(plain)
                .filter(written -> written.end() == plain.length() && Packings.holds(written.packing()))
                .isPresent();
    }

    /** The weight or volume that a piece of text is, and nothing else. */
    private static Optional<Quantity> amount(String piece, QuantityReader quantities) {
        Wording bare = FILLED.replaceFirst(Wording.of(piece.strip()), "");
        if (!QuantityReader.mayBegin(bare.text(), 0)) {
            return Optional.empty();
        }
        String plain = WEIGHED_HOW.replaceFirst(bare, "").strip().text();
        return quantities
                .read(plain)
                .filter(written -> written.end() == plain.length())
                .map(WrittenQuantity::quantity)
                .filter(quantity -> quantity.dimension() == Dimension.MASS || quantity.dimension() == Dimension.VOLUME);
    }
}
