package org.misecue.publish;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.quantity.Packings;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.recipe.IngredientLine;
import org.misecue.scale.WeighedLine;

/**
 * One line of the published list in its two parts: the amount for the batch, and the recipe's own words behind it.
 *
 * @param amount "175 g (¾ cup)"; empty for "salt, to taste"
 * @param rest "unsalted butter, softened", in safe characters
 */
record IngredientText(String amount, String rest) {

    static final String BULLET = "• ";

    private static final Pattern TIMES = Pattern.compile("(\\d)\\s*[x×]\\s*(?=\\d)");
    private static final QuantityReader READER = new QuantityReader();

    /** The line in the measure of the recipe, for machines: "175 g unsalted butter, softened". */
    static String plain(WeighedLine line) {
        return of(line, Amounts.ENGLISH::text).line();
    }

    /** How an amount is written. */
    interface Writing {
        String text(Quantity quantity);
    }

    static IngredientText of(WeighedLine line, Writing writing) {
        IngredientLine written = line.written();
        Optional<Quantity> weighed = line.weighed();
        if (weighed.isEmpty()) {
            return new IngredientText("", SafeText.line(written.text()));
        }
        boolean asWritten = weighed.equals(written.quantity());
        Optional<WrittenQuantity> lead = READER.read(written.text())
                .filter(found ->
                        written.quantity().filter(found.quantity()::equals).isPresent());
        if (lead.isEmpty()) {
            return asWritten
                    ? new IngredientText("", SafeText.line(written.text()))
                    : unled(written, weighed.get(), writing);
        }
        String head = SafeText.line(written.text().substring(0, lead.get().end()));
        String rest = SafeText.line(written.text().substring(lead.get().end()));
        String of = head.endsWith(" of") ? " of" : "";
        if (written.packing().isEmpty()) {
            return new IngredientText(writing.text(weighed.get()) + of, rest);
        }
        return asWritten
                ? new IngredientText(TIMES.matcher(head).replaceAll("$1 × "), rest)
                : packed(weighed.get(), written.packing(), of, rest);
    }

    /** A line that does not begin with its amount: "juice of 1 lemon", "small bunch of mint". */
    private static IngredientText unled(IngredientLine written, Quantity weighed, Writing writing) {
        String rest = SafeText.line(composed(written));
        return written.packing().isEmpty() || weighed.unit() != Unit.EACH
                ? new IngredientText(writing.text(weighed), rest)
                : packed(weighed, written.packing(), "", rest);
    }

    /** "3 cloves of garlic"; what came as "2 x 400 g tins" is weighed, for half a tin is no amount. */
    private static IngredientText packed(Quantity weighed, String packing, String of, String rest) {
        String amount = Amounts.ENGLISH.text(weighed);
        if (weighed.unit() != Unit.EACH) {
            return new IngredientText(amount, rest + " (from a " + packing + ")");
        }
        boolean one = weighed.amount().most().stream().allMatch(most -> most.compareTo(Rationals.ONE) <= 0);
        return new IngredientText(amount + " " + (one ? packing : Packings.plural(packing)) + of, rest);
    }

    /** The words of a line whose amount does not lead it: "juice of 1 lemon". */
    private static String composed(IngredientLine line) {
        String name = line.ingredient()
                + line.alternatives().stream().map(other -> " or " + other).collect(Collectors.joining());
        return Stream.of(name, line.preparation(), line.optional() ? "optional" : "")
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    String line() {
        return amount.isEmpty() ? rest : amount + " " + rest;
    }
}
