package org.misecue.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The words that make an amount approximate: "about", "up to"; and, before a spoon, "heaped" or "scant". */
final class Hedges {

    static final Shape ARTICLE = Shape.inAnyCase(
            "(?:an?|the)\\h+(?=[\\d½¼¾⅓⅔]|scant|generous|good|pinch|(?:(?:\\p{L}+)-){1,4}(?:gram|ounce|pound|inch|litre|centimetre|centimeter)\\b)");
    static final Shape HEDGE = Shape.inAnyCase(
            "(about|approximately|approx\\.?|around|roughly|circa|abt\\.?|ca?\\.|~|≈|nearly|almost|not\\h+quite|maybe|perhaps|some(?=\\h+\\d)"
                    + "|(?:(?:just|slightly|an?\\h+(?:little|bit|touch))\\h+)?(?:over|under|more\\h+than|less\\h+than)|up\\h+to"
                    + "|at\\h+least|scant|generous|good)\\h*(?=[\\d\\h½¼¾⅓⅔⅛a-z])");
    private static final Shape HANDLING = Shape.inAnyCase(
            "[\\h-]*(heaped|heaping|rounded|scant|generous|good|level|flat|full|large|small|big|tiny|more|further|extra)\\h+");
    private static final Pattern EXACT_HANDLING =
            Pattern.compile("level|flat|full|large|small|big|tiny|more|further|extra");

    private Hedges() {}

    /** The hedge that stands here, in lower case, with its article skipped; empty where there is none. */
    static String take(Cursor cursor) {
        cursor.skip(ARTICLE);
        return cursor.take(HEDGE)
                .map(found -> found.group(1).toLowerCase(Locale.ROOT))
                .map(word -> {
                    cursor.skip(ARTICLE);
                    return word;
                })
                .orElse("");
    }

    /** How a spoon is filled, where that makes it inexact: "heaped"; a level one is exact. */
    static String takeHandling(Cursor cursor) {
        Optional<String> handling = handling(cursor);
        return handling.filter(word -> !EXACT_HANDLING.matcher(word).matches()).orElse("");
    }

    static void skipHandling(Cursor cursor) {
        handling(cursor);
    }

    private static Optional<String> handling(Cursor cursor) {
        Optional<String> word =
                cursor.take(HANDLING).map(found -> found.group(1).toLowerCase(Locale.ROOT));
        if (word.isEmpty()) {
            cursor.skipBlanksAndHyphens();
        }
        return word;
    }

    /** The quantity with its hedge; a pinch is never exact and needs none. */
    static Quantity on(Quantity quantity, String hedge) {
        return hedge.isEmpty() || quantity.amount().hedged() || quantity.unit() == Unit.PINCH
                ? quantity
                : new Quantity(new Amount.Approximate(quantity.amount(), hedge), quantity.unit());
    }
}
