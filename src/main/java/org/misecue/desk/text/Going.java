package org.misecue.desk.text;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.door.Refusal;

/**
 * What somebody wants to count as published.
 *
 * @param on the day
 * @param anyway why it goes out in spite of what keeps it back; empty where nothing does
 * @param seen the mark of the page that they had before their eyes
 * @param sure whether they said yes to what it will be
 */
public record Going(LocalDate on, String by, String anyway, String seen, boolean sure) {

    static Going of(Context request, TextSheet sheet) {
        String anyway = Fields.text(request, "anyway");
        if (sheet.isDraft() && anyway.isEmpty()) {
            throw new Refusal(
                    409,
                    "Something still keeps this from being published: decide on it, or write why it goes out all the same.");
        }
        return new Going(
                day(Fields.text(request, "on")),
                Fields.by(request),
                sheet.isDraft() ? anyway : "",
                Fields.text(request, "seen"),
                Fields.text(request, "sure").equals("yes"));
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new Refusal(400, "Expected a day such as 2026-05-20, not “" + text + "”.");
        }
    }
}
