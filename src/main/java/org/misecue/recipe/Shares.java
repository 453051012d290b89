package org.misecue.recipe;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.WrittenQuantity;
import tech.units.indriya.function.RationalNumber;

/** How much of an ingredient a step takes: "half the sugar", "2 tbsp of the milk", "the rest of the seeds". */
final class Shares {

    /** A share: the amount where it can be told, and the words. */
    record Share(Optional<Quantity> part, String words) {
        static final Share ALL = new Share(Optional.empty(), "");
    }

    private static final Pattern WORDS = Pattern.compile(
            "\\b(half|a\\h+third|one\\h+third|two[\\h-]thirds|a\\h+quarter|three[\\h-]quarters|most|some|a\\h+little|the\\h+rest|the\\h+remaining"
                    + "|the\\h+remainder|the\\h+last|the\\h+other\\h+half|remaining|the\\h+reserved)(?:\\h+(?:more\\h+)?of)?(?:\\h+(?:the|your|it))?(?:\\h+[\\p{L}-]+)?\\h+$",
            Pattern.CASE_INSENSITIVE);
    private static final Map<String, RationalNumber> FRACTIONS = Map.of(
            "half",
            Rationals.of(1, 2),
            "a third",
            Rationals.of(1, 3),
            "one third",
            Rationals.of(1, 3),
            "two thirds",
            Rationals.of(2, 3),
            "a quarter",
            Rationals.of(1, 4),
            "three quarters",
            Rationals.of(3, 4),
            "the other half",
            Rationals.of(1, 2));
    private static final Pattern START = Pattern.compile("(?<![\\p{L}\\d.,/])(?!an?\\b)(?=[\\p{L}\\d½¼¾⅓⅔⅛])");
    private static final Pattern OF_THE =
            Pattern.compile("(?:(?:the|your)\\h+)?(?:[\\p{L}-]+\\h+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern ALL_BUT =
            Pattern.compile("\\b(?:all|everything)\\h+(?:but|except)\\h+$", Pattern.CASE_INSENSITIVE);
    private static final int REACH = 45;

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private Shares() {}

    /** The share written before a mention that starts at a place of the text. */
    static Share before(String text, int start, IngredientLine line) {
        String before = text.substring(Math.max(Sentences.start(text, start), start - REACH), start);
        Matcher words = WORDS.matcher(before);
        if (words.find()) {
            String said = words.group(1).toLowerCase(Locale.ROOT).replaceAll("[\\h-]+", " ");
            Optional<Quantity> part = Optional.ofNullable(FRACTIONS.get(said))
                    .flatMap(fraction -> line.quantity().map(quantity -> quantity.times(fraction)));
            boolean rest = said.matches("the re.*|the last|remaining");
            return new Share(part, rest ? "the rest" : said);
        }
        Matcher at = START.matcher(before);
        while (at.find()) {
            String from = before.substring(at.start());
            Optional<WrittenQuantity> written = QUANTITIES.read(from).filter(Shares::isFood);
            if (written.isPresent()
                    && ALL_BUT.matcher(before.substring(0, at.start())).find()) {
                return new Share(Optional.empty(), "most");
            }
            if (written.isPresent()
                    && OF_THE.matcher(from.substring(written.get().end())).matches()) {
                return new Share(Optional.of(written.get().quantity()), "");
            }
        }
        return Share.ALL;
    }

    private static boolean isFood(WrittenQuantity written) {
        Dimension dimension = written.quantity().dimension();
        return !(written.quantity().amount() instanceof Amount.Unstated)
                && (dimension == Dimension.MASS || dimension == Dimension.VOLUME || dimension == Dimension.COUNT);
    }
}
