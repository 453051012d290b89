package org.misecue.desk.check;

import io.javalin.http.Context;
import java.util.Optional;
import org.misecue.desk.door.Refusal;

/** What somebody typed into a form. */
public final class Fields {

    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_TEXT = 2000;

    private Fields() {}

    /** One line, empty where nothing was typed. */
    public static String text(Context request, String name) {
        return line(request, name, LONGEST_TEXT);
    }

    /** Whoever does something; this computer's user where nobody is named. */
    public static String by(Context request) {
        String name = line(request, "by", LONGEST_NAME);
        return name.isEmpty() ? user() : name;
    }

    /** This computer's user. */
    public static String user() {
        return System.getProperty("user.name", "");
    }

    private static String line(Context request, String name, int longest) {
        String text = Optional.ofNullable(request.formParam(name)).orElse("");
        if (text.length() > longest) {
            throw new Refusal(400, "That is too long for “" + name + "”; put it into " + longest + " characters.");
        }
        return text.strip().replaceAll("\\s+", " ");
    }
}
