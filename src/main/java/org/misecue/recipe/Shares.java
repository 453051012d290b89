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

    /** Each share in words holds one of these. */
    static final Cues CUES = Cues.of(
            "half",
            "third",
            "quarter",
            "fifth",
            "sixth",
            "eighth",
            "½",
            "⅓",
            "⅔",
            "¼",
            "¾",
            "most",
            "some",
            "few",
            "little",
            "bit",
            "handful",
            "rest",
            "remain",
            "last",
            "leftover",
            "other",
            "reserved");

    private static final Pattern WORDS = Pattern.compile(
            "\\b(?<said>" + FRACTION
                    + "|most|some|a\\h+few|a\\h+little|a\\h+bit|a\\h+(?:small\\h+|large\\h+|good\\h+)?handful|" + REST
                    + "|the\\h+other\\h+half|(?:the\\h+)?reserved)(?:\\h+(?:more\\h+)?of)?(?:\\h+(?:the|your|it|an?|its))?(?<kind>\\h+[\\p{L}-]+)?\\h+$",
            Pattern.CASE_INSENSITIVE);
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
    private static final Pattern ARTICLE = Pattern.compile(
            "an?\\h+(?!(?:heaped\\h+|level\\h+)?(?:tablespoon|teaspoon|tbsp|tsp|cup|pint|litre|kilo)\\b)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern OF_THE =
            Pattern.compile("(?:(?:the|your)\\h+)?(?:[\\p{L}-]+\\h+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern ALL_BUT = Pattern.compile(
            "\\b(?:all|everything)\\h+(?:but|except|bar)\\h+(?:the\\h+last\\h+)?$", Pattern.CASE_INSENSITIVE);
    private static final Pattern LAST_OF_IT =
            Pattern.compile("\\b(?:" + REST + "|the\\h+other)\\h+$", Pattern.CASE_INSENSITIVE);
    private static final Pattern AT_A_TIME =
            Pattern.compile("^(?:[\\p{L}-]+\\h+){1,3}at\\h+a\\h+time\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern BRACKETED = Pattern.compile("^\\h*\\((?=[\\d½¼¾⅓⅔⅛])([^()]+)\\)");
    private static final Pattern LESS =
            Pattern.compile("^\\h+(?:bar|but|except|less|minus)\\h+(?=[\\p{L}\\d½¼¾⅓⅔⅛])", Pattern.CASE_INSENSITIVE);
    private static final Pattern ALL = Pattern.compile("\\ball\\h+(?:of\\h+)?(?:the\\h+)?$", Pattern.CASE_INSENSITIVE);
    private static final int REACH = 45;

    private static final QuantityReader QUANTITIES = new QuantityReader();

    private Shares() {}

    /** The share written around a mention of a line. */
    static Share around(String text, int start, int end, IngredientLine line) {
        String before = text.substring(Math.max(Sentences.start(text, start), start - REACH), start);
        if (AT_A_TIME.matcher(text).region(start, text.length()).lookingAt()) {
            return Share.ALL;
        }
        Share said = said(before, line);
        return Asides.isBefore(before) && !said.isAll() && !said.isRest()
                ? said.setAside()
                : withBehind(said, before, text.substring(end), line);
    }

    private static Share said(String before, IngredientLine line) {
        Matcher words = WORDS.matcher(before);
        return CUES.standIn(before) && words.find() ? inWords(words, line) : inFigures(before, line);
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

    private static Share inFigures(String before, IngredientLine line) {
        for (int at = 0; at < before.length(); at++) {
            if (!startsAt(before, at) || !QuantityReader.mayBegin(before, at)) {
                continue;
            }
            String from = before.substring(at);
            Optional<WrittenQuantity> written = QUANTITIES.read(from).filter(Shares::isFood);
            if (written.isPresent()
                    && !ARTICLE.matcher(from).lookingAt()
                    && OF_THE.matcher(from.substring(written.get().end())).matches()) {
                Quantity quantity = written.get().quantity();
                String ahead = before.substring(0, at);
                if (ALL_BUT.matcher(ahead).find()) {
                    return Share.allBut(line, quantity);
                }
                return new Share(
                        Optional.of(quantity), LAST_OF_IT.matcher(ahead).find() ? Share.REST : "");
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
    private static Share withBehind(Share said, String before, String behind, IngredientLine line) {
        Matcher bracketed = BRACKETED.matcher(behind);
        if (said.part().isEmpty() && bracketed.find()) {
            Optional<Quantity> inside = measure(bracketed.group(1));
            return inside.map(quantity -> new Share(Optional.of(quantity), said.words()))
                    .orElse(said);
        }
        Matcher less = LESS.matcher(behind);
        if (said.isAll() && ALL.matcher(before).find() && less.find()) {
            return measure(behind.substring(less.end()))
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
