package org.misecue.quantity;

import java.util.Locale;
import java.util.regex.Pattern;

/** The words that make an amount approximate: "about", "up to"; and, before a spoon, "heaped" or "scant". */
final class Hedges {

    static final Pattern ARTICLE = Pattern.compile(
            "(?:an?|the)\\h+(?=[\\d½¼¾⅓⅔]|scant|generous|good|pinch|(?:(?:\\p{L}+)-){1,4}(?:gram|ounce|pound|inch|litre|centimetre|centimeter)\\b)",
            Pattern.CASE_INSENSITIVE);
    static final Pattern HEDGE = Pattern.compile(
            "(about|approximately|approx\\.?|around|roughly|circa|abt\\.?|ca?\\.|~|≈|nearly|almost|not\\h+quite|maybe|perhaps|some(?=\\h+\\d)"
                    + "|(?:(?:just|slightly|an?\\h+(?:little|bit|touch))\\h+)?(?:over|under|more\\h+than|less\\h+than)|up\\h+to"
                    + "|at\\h+least|scant|generous|good)\\h*(?=[\\d\\h½¼¾⅓⅔⅛a-z])",
            Pattern.CASE_INSENSITIVE);
    static final Pattern HANDLING = Pattern.compile(
            "[\\h-]*(?:(heaped|heaping|rounded|scant|generous|good|level|flat|full|large|small|big|tiny|more|further|extra)\\h+)?",
            Pattern.CASE_INSENSITIVE);
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
        return cursor.take(HANDLING)
                .map(found -> found.group(1))
                .map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> !EXACT_HANDLING.matcher(word).matches())
                .orElse("");
    }

    /** The quantity with its hedge; a pinch is never exact and needs none. */
    static Quantity on(Quantity quantity, String hedge) {
        return hedge.isEmpty() || quantity.amount().hedged() || quantity.unit() == Unit.PINCH
                ? quantity
                : new Quantity(new Amount.Approximate(quantity.amount(), hedge), quantity.unit());
    }
}
