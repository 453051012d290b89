package org.misecue.shots;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sentence of a step that a place lies in; a stop between figures, as in "2.5 cm", ends none. */
record Clause(int start, int end) {

    private static final Pattern END = Pattern.compile("[.;!?](?=\\s|$)|\\n");

    static Clause around(String text, int place) {
        Matcher ends = END.matcher(text);
        int start = 0;
        while (ends.find()) {
            if (ends.start() >= place) {
                return new Clause(start, ends.start());
            }
            start = ends.end();
        }
        return new Clause(start, text.length());
    }

    boolean holds(int place) {
        return start <= place && place < end;
    }

    String of(String text) {
        return text.substring(start, end).strip();
    }
}
