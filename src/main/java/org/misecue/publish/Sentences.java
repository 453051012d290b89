package org.misecue.publish;

import java.text.BreakIterator;
import java.util.Locale;
import java.util.regex.Pattern;

/** The first sentence of a step. */
final class Sentences {

    /** Full stops that end no sentence: "approx. 20 minutes". */
    private static final Pattern SHORTENED = Pattern.compile("(?i)(^|[\\s(])(approx|no|e\\.g|i\\.e|ca|c)\\.\\s*$");

    private Sentences() {}

    static String first(String text) {
        BreakIterator sentences = BreakIterator.getSentenceInstance(Locale.UK);
        sentences.setText(text);
        int end = sentences.next();
        while (end != BreakIterator.DONE
                && SHORTENED.matcher(text.substring(0, end)).find()) {
            end = sentences.next();
        }
        return end == BreakIterator.DONE ? text : text.substring(0, end).strip();
    }
}
