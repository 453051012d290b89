package org.misecue.spoken;

import java.util.Set;

/** Places in a row, which are no amounts: "the twenty first of March", "my two hundredth loaf". */
final class Ordinals {

    /** Without "second": "a thirty second blitz" is of thirty seconds. */
    private static final Set<String> AFTER_TENS = Words.set("first third fourth fifth sixth seventh eighth ninth");

    private static final Set<String> AFTER_HUNDRED = Words.set(
            "third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth"
                    + " sixteenth seventeenth eighteenth nineteenth twentieth thirtieth fortieth fiftieth sixtieth"
                    + " seventieth eightieth ninetieth");

    private static final Set<String> SCALES =
            Words.set("hundredth thousandth millionth billionth trillionth quadrillionth");

    private Ordinals() {}

    /** Whether the words of a whole number, which end before the index, go on as an ordinal. */
    static boolean goesOn(WordStream words, int end) {
        String last = words.text(end - 1);
        String next = words.text(end);
        if (SCALES.contains(next) || (NumberWords.TENS.containsKey(last) && AFTER_TENS.contains(next))) {
            return true;
        }
        boolean round = last.equals("hundred") || NumberWords.SCALES.containsKey(last);
        if (!round) {
            return false;
        }
        // "weigh a hundred first" is an amount, "a hundred and first" is none.
        return next.equals("and")
                ? AFTER_HUNDRED.contains(words.text(end + 1)) || isFirstOrSecond(words.text(end + 1))
                : AFTER_HUNDRED.contains(next);
    }

    private static boolean isFirstOrSecond(String word) {
        return word.equals("first") || word.equals("second");
    }
}
