package org.misecue.recipe;

import java.util.regex.Pattern;

/** Looks back from a place of a text. */
final class Back {

    /** The words that matter stand close; to look further would make long steps slow. */
    private static final int REACH = 80;

    private Back() {}

    /** Whether what stands right before the place matches; the pattern ends in {@code $}. */
    static boolean matches(Pattern pattern, String text, int end) {
        return pattern.matcher(text)
                .region(Math.max(0, end - REACH), end)
                .useTransparentBounds(true)
                .find();
    }
}
