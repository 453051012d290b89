package org.misecue.quantity;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The letters that a text may begin with so that a pattern can match there: a glance at them spares most tries. */
public final class Beginnings {

    /** So many letters tell most words apart. */
    public static final int LETTERS = 2;

    private Beginnings() {}

    /**
     * The first two letters, in lower case, of every text that begins with two letters from a to z and may match.
     *
     * @param pattern without regard to case; what it matches is at least two signs long
     */
    public static Set<String> of(Pattern pattern) {
        Stream<String> begins = Stream.of("");
        for (int length = 1; length <= LETTERS; length++) {
            begins = begins.flatMap(start -> IntStream.rangeClosed('a', 'z')
                    .mapToObj(letter -> start + (char) letter)
                    .filter(letters -> mayBegin(pattern, letters)));
        }
        return begins.collect(Collectors.toUnmodifiableSet());
    }

    /** It matched, or the end of the letters was all that stopped it. */
    private static boolean mayBegin(Pattern pattern, String letters) {
        Matcher matcher = pattern.matcher(letters);
        return matcher.lookingAt() || matcher.hitEnd();
    }
}
