package org.misecue.shots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Words by which a method tells an action. The beginning of a word is enough, and three dots stand for what may come
 * between: "spoon ... over" finds "spoon over the honey" and "spooned the honey all over".
 */
record MethodPhrase(String words, Pattern pattern) {

    private static final String GAP = "[^.;!?]{0,60}?\\b";

    /** "The pour" and "a place" are things. */
    private static final Pattern THING =
            Pattern.compile("\\b(?:the|an?|your|some|of|each|every)\\h+$", Pattern.CASE_INSENSITIVE);

    /** A place of the text that tells it: {@code [start, end)} of the words before the first dots. */
    record Found(int start, int end) {}

    static MethodPhrase of(String words) {
        String parts = Arrays.stream(words.toLowerCase(Locale.ROOT).strip().split("\\s*\\.\\.\\.\\s*"))
                .map(part ->
                        Arrays.stream(part.split("\\s+")).map(Pattern::quote).collect(Collectors.joining("\\h+")))
                .collect(Collectors.joining(")" + GAP + "(?:", "(", ")"));
        return new MethodPhrase(words, Pattern.compile("(?<![\\p{L}-])" + parts, Pattern.CASE_INSENSITIVE));
    }

    List<Found> in(String text) {
        List<Found> places = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            if (!THING.matcher(text.substring(0, matcher.start())).find()) {
                places.add(new Found(matcher.start(), matcher.end(1)));
            }
        }
        return places;
    }
}
