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
    private static final int MOST = 4;

    private Beginnings() {}

    /**
     * What {@link #at} may find where the pattern matches, as long as that are two letters or more.
     *
     * @param pattern without regard to case; its first letters must be spelled out, or there are too many beginnings
     */
    public static Set<String> of(Pattern pattern) {
        Stream<String> all = Stream.of();
        Stream<String> begins = Stream.of("");
        for (int length = 1; length <= MOST; length++) {
            Set<String> longer = begins.flatMap(
                            start -> IntStream.rangeClosed('a', 'z').mapToObj(letter -> start + (char) letter))
                    .filter(letters -> mayBegin(pattern, letters))
                    .collect(Collectors.toUnmodifiableSet());
            all = length == 1 ? all : Stream.concat(all, longer.stream());
            begins = longer.stream();
        }
        return all.collect(Collectors.toUnmodifiableSet());
    }

    /** The letters from a to z that stand at a place, the first four at most, in lower case. */
    public static String at(String text, int start) {
        char[] letters = new char[MOST];
        int length = 0;
        while (length < MOST && start + length < text.length()) {
            char letter = (char) (text.charAt(start + length) | 0x20); // lower case, for letters from A to Z
            if (letter < 'a' || letter > 'z') {
                break;
            }
            letters[length++] = letter;
        }
        return new String(letters, 0, length);
    }

    /** It matched, or the end of the letters was all that stopped it. */
    private static boolean mayBegin(Pattern pattern, String letters) {
        Matcher matcher = pattern.matcher(letters);
        return matcher.lookingAt() || matcher.hitEnd();
    }
}
