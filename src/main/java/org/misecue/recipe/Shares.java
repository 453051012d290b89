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

    static final String FRACTION =
            "half|(?:a|one|two|1|2)[\\h-]thirds?|(?:a|one|three|1|3)[\\h-]quarters?|(?:a|one|1)[\\h-](?:fifth|sixth|eighth)|[½⅓⅔¼¾]";
    static final String REST =
            "the\\h+rest|the\\h+remaining|the\\h+remainder|the\\h+last|the\\h+leftover|what(?:[’']s|\\h+is|\\h+was)\\h+left|remaining|all\\h+remaining";

    private static final Cued WORDS = Cued.inAnyCase(
            "\\b(?<said>" + FRACTION
                    + "|most|some|a\\h+few|a\\h+little|a\\h+bit|a\\h+(?:small\\h+|large\\h+|good\\h+)?handful|" + REST
                    + "|the\\h+other\\h+half|(?:the\\h+)?reserved)(?:\\h+(?:more\\h+)?of)?(?:\\h+(?:the|your|it|an?|its))?(?<kind>\\h+[\\p{L}-]+)?\\h+$");
    private static final Map<String, RationalNumber> PARTS = Map.of(
            "half", Rationals.of(1, 2),
            "third", Rationals.of(1, 3),
            "quarter", Rationals.of(1, 4),
            "fifth", Rationals.of(1, 5),
            "sixth", Rationals.of(1, 6),
            "eighth", Rationals.of(1, 8));
    private static final Map<String, RationalNumber> SIGNS = Map.of(
            "½", Rationals.of(1, 2),
            "⅓", Rationals.of(1, 3),
            "⅔", Rationals.of(2, 3),
            "¼", Rationals.of(1, 4),
            "¾", Rationals.of(3, 4));
    /** "A" before anything but a measure is no amount. */
    private static final Cued ARTICLE = Cued.inAnyCase(
            "an?\\h+(?!(?:heaped\\h+|level\\h+)?(?:tablespoon|teaspoon|tbsp|tsp|cup|pint|litre|kilo)\\b)");

    private static final Pattern OF_THE =
            Pattern.compile("(?:(?:the|your)\\h+)?(?:[\\p{L}-]+\\h+)?", Pattern.CASE_INSENSITIVE);
    private static final Cued ALL_BUT =
            Cued.inAnyCase("\\b(?:all|everything)\\h+(?:but|except|bar)\\h+(?:the\\h+last\\h+)?$");
    private static final Cued LAST_OF_IT = Cued.inAnyCase("\\b(?:" + REST + "|the\\h+other)\\h+$");
    private static final Cued AT_A_TIME = Cued.inAnyCase("(?:[\\p{L}-]+\\h+){1,3}at\\h+a\\h+time\\b");
    private static final Cued BRACKETED = Cued.of("^\\h*\\((?=[\\d½¼¾⅓⅔⅛])([^()]+)\\)");
    private static final Cued LESS = Cued.inAnyCase("^\\h+(?:bar|but|except|less|minus)\\h+(?=[\\p{L}\\d½¼¾⅓⅔⅛])");
    private static final Cued ALL = Cued.inAnyCase("\\ball\\h+(?:of\\h+)?(?:the\\h+)?$");
    private static final int REACH = 45;

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private Shares() {}

    /** The share written around a mention of a line. */
    static Share around(Wording wording, int start, int end, IngredientLine line) {
        if (AT_A_TIME.at(wording, start).isPresent()) {
            return Share.ALL;
        }
        String text = wording.text();
        String before = text.substring(Math.max(Sentences.start(text, start), start - REACH), start);
        Share said = said(wording, before, line);
        return !said.isAll() && !said.isRest() && Asides.isBefore(wording, before)
                ? said.setAside()
                : withBehind(said, wording, before, text.substring(end), line);
    }

    private static Share said(Wording text, String before, IngredientLine line) {
        return WORDS.firstIn(text, before)
                .map(words -> inWords(words, line))
                .orElseGet(() -> inFigures(text, before, line));
    }

    private static Share inWords(Matcher words, IngredientLine line) {
        String said = words.group("said").toLowerCase(Locale.ROOT).replaceAll("[\\h-]+", " ");
        Optional<RationalNumber> fraction = fraction(said);
        String kind = Optional.ofNullable(words.group("kind")).orElse("").strip();
        if (fraction.isPresent() && kind.matches("(?i)remaining|rest|remainder")) {
            return Share.ofTheRest(said, fraction.get());
        }
        if (fraction.isPresent()) {
            return new Share(line.quantity().map(whole -> whole.times(fraction.get())), said);
        }
        return new Share(Optional.empty(), plain(said));
    }

    /** One word for what says the same. */
    static String plain(String said) {
        if (said.matches("(?:the )?reserved")) {
            return Use.RESERVED;
        }
        if (said.matches("(?:the )?(?:re.*|last|leftover|other)|all remaining|what.*")) {
            return Share.REST;
        }
        return said.equals("a few")
                ? "some"
                : said.equals("a bit") ? "a little" : said.replaceFirst("(?:small|large|good) ", "");
    }

    /** The fraction that these words name. */
    static Optional<RationalNumber> fraction(String said) {
        if (SIGNS.containsKey(said)) {
            return Optional.ofNullable(SIGNS.get(said));
        }
        String part = Nouns.last(said.replace('-', ' ')).replaceFirst("(?<=third|quarter)s$", "");
        long top = said.matches("(?:two|2)\\b.*") ? 2 : said.matches("(?:three|3)\\b.*") ? 3 : 1;
        return Optional.ofNullable(PARTS.get(part)).map(one -> one.multiply(Rationals.of(top)));
    }

    private static Share inFigures(Wording text, String before, IngredientLine line) {
        for (int at = 0; at < before.length(); at++) {
            if (!startsAt(before, at) || !QuantityReader.mayBegin(before, at)) {
                continue;
            }
            String from = before.substring(at);
            Optional<WrittenQuantity> written = QUANTITIES.read(from).filter(Shares::isFood);
            if (written.isPresent()
                    && !ARTICLE.pattern().matcher(from).lookingAt()
                    && OF_THE.matcher(from.substring(written.get().end())).matches()) {
                Quantity quantity = written.get().quantity();
                String ahead = before.substring(0, at);
                if (ALL_BUT.firstIn(text, ahead).isPresent()) {
                    return Share.allBut(line, quantity);
                }
                return new Share(
                        Optional.of(quantity), LAST_OF_IT.firstIn(text, ahead).isPresent() ? Share.REST : "");
            }
        }
        return Share.ALL;
    }

    /** Whether a word or a figure begins here. */
    private static boolean startsAt(String text, int at) {
        int sign = text.codePointAt(at);
        return (Character.isLetter(sign) || "0123456789½¼¾⅓⅔⅛".indexOf(sign) >= 0)
                && (at == 0 || !goesOn(text.codePointBefore(at)));
    }

    private static boolean goesOn(int sign) {
        return Character.isLetter(sign) || "0123456789.,/".indexOf(sign) >= 0;
    }

    /** An amount that stands behind the name: "the sugar (50 g)", "all the milk bar 2 tbsp". */
    private static Share withBehind(Share said, Wording text, String before, String behind, IngredientLine line) {
        Optional<Matcher> bracketed = said.part().isEmpty() ? BRACKETED.firstIn(text, behind) : Optional.empty();
        if (bracketed.isPresent()) {
            Optional<Quantity> inside = measure(bracketed.get().group(1));
            return inside.map(quantity -> new Share(Optional.of(quantity), said.words()))
                    .orElse(said);
        }
        Optional<Matcher> less =
                said.isAll() && ALL.firstIn(text, before).isPresent() ? LESS.firstIn(text, behind) : Optional.empty();
        if (less.isPresent()) {
            return measure(behind.substring(less.get().end()))
                    .map(quantity -> Share.allBut(line, quantity))
                    .orElse(said);
        }
        return said;
    }

    private static Optional<Quantity> measure(String text) {
        return QUANTITIES.read(text).filter(Shares::isFood).map(WrittenQuantity::quantity);
    }

    private static boolean isFood(WrittenQuantity written) {
        Dimension dimension = written.quantity().dimension();
        return !(written.quantity().amount() instanceof Amount.Unstated)
                && (dimension == Dimension.MASS || dimension == Dimension.VOLUME || dimension == Dimension.COUNT);
    }
}
