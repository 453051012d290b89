package org.misecue.desk.counter;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
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

    /** Just as it came: for what a page put into its own form. */
    public static String raw(Context request, String name) {
        return Optional.ofNullable(request.formParam(name)).orElse("");
    }

    /**
     * Of the form that was sent, or else of the address, just as it came. Whoever asks for a body where none is sent waits for
     * nothing.
     */
    public static String sentOrAsked(Context request, String name) {
        return request.method() == HandlerType.POST ? raw(request, name) : asked(request, name);
    }

    /** Of the address, just as it came; empty where it does not have it. */
    public static String asked(Context request, String name) {
        return Optional.ofNullable(request.queryParam(name)).orElse("");
    }

    private static String line(Context request, String name, int longest) {
        String text = raw(request, name);
        if (text.length() > longest) {
            throw new Refusal(400, "That is too long for “" + name + "”; put it into " + longest + " characters.");
        }
        return text.strip().replaceAll("\\s+", " ");
    }
}
