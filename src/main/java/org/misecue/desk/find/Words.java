package org.misecue.desk.find;

import io.javalin.http.Context;
import org.misecue.desk.counter.Fields;

/** The words that somebody is looking for. */
final class Words {

    private static final int LONGEST = 200;

    private Words() {}

    /** Empty while there is nothing in the field that could be found. */
    static String of(Context request) {
        String words = Fields.asked(request, "q").strip();
        String asked = words.length() > LONGEST ? words.substring(0, LONGEST) : words;
        return asked.codePoints().anyMatch(Words::isSaid) ? asked : "";
    }

    private static boolean isSaid(int sign) {
        return Character.isLetterOrDigit(sign) || Character.getType(sign) == Character.OTHER_NUMBER;
    }
}
