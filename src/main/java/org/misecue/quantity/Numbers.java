package org.misecue.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tech.units.indriya.function.RationalNumber;

/** Reads a number in figures, in words, or in both: "1 and a half", "2 dozen". */
final class Numbers {

    /** Nobody writes more than this of anything into a recipe. */
    static final int MOST = 100_000;

    private static final String A_SHARE = "\\h+and\\h+an?\\h+(half|quarter|third)\\b";
    /** The rest of the number "1 and a half". */
    private static final Shape AND_HALF = Shape.inAnyCase(A_SHARE);
    /** The rest of "a cup and a half". */
    private static final Shape UNIT_AND_HALF =
            Shape.inAnyCase(A_SHARE + "(?!\\h+(?:an?\\h+)?(?:tea|table|cup|tsp|tbsp))");

    private static final Map<String, RationalNumber> SHARES =
            Map.of("half", Rationals.of(1, 2), "third", Rationals.of(1, 3), "quarter", Rationals.of(1, 4));
    private static final Shape DOZEN = Shape.inAnyCase("\\h*(?:dozen|doz)\\b\\.?(?:\\h+of\\b)?");

    private static final RationalNumber LIMIT = Rationals.of(MOST);

    private Numbers() {}

    /** The number that stands here, where it is one that can be used. */
    static Optional<RationalNumber> take(Cursor cursor) {
        return cursor.number(Numbers::read);
    }

    private static Optional<RationalNumber> read(Cursor cursor) {
        return NumberReader.take(cursor)
                .map(value -> cursor.skip(DOZEN) ? value.multiply(Rationals.of(12)) : value)
                .map(value -> andAShare(cursor, value, AND_HALF))
                .or(() -> NumberWords.take(cursor))
                .filter(value -> value.compareTo(LIMIT) <= 0);
    }

    /** The amount with the share that follows its unit: the "and a half" of "a cup and a half". */
    static Amount andAHalf(Cursor cursor, Amount amount) {
        if (!(amount instanceof Amount.Exact whole)) {
            return amount;
        }
        return Amount.of(andAShare(cursor, whole.value(), UNIT_AND_HALF));
    }

    private static RationalNumber andAShare(Cursor cursor, RationalNumber whole, Shape share) {
        return cursor.take(share)
                .map(found -> whole.add(SHARES.getOrDefault(found.group(1).toLowerCase(Locale.ROOT), Rationals.ZERO)))
                .orElse(whole);
    }
}
