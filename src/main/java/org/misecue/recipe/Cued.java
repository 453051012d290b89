package org.misecue.recipe;

import java.util.regex.Pattern;

/** A pattern that is tried only on texts that hold one of the plain words it cannot do without. */
record Cued(Cues cues, Pattern pattern) {

    static Cued of(String regex, String... cues) {
        return new Cued(Cues.of(cues), Pattern.compile(regex));
    }

    static Cued inAnyCase(String regex, String... cues) {
        return new Cued(Cues.of(cues), Pattern.compile(regex, Pattern.CASE_INSENSITIVE));
    }

    boolean standsIn(String text) {
        return cues.standIn(text) && pattern.matcher(text).find();
    }

    String replaceAll(String text, String put) {
        return cues.standIn(text) ? pattern.matcher(text).replaceAll(put) : text;
    }

    String replaceFirst(String text, String put) {
        return cues.standIn(text) ? pattern.matcher(text).replaceFirst(put) : text;
    }
}
