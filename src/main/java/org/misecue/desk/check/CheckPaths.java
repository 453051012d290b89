package org.misecue.desk.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import org.misecue.episode.Choice;

/** Small words and addresses of the page. */
public final class CheckPaths {

    private CheckPaths() {}

    /** A file's name as a part of an address. */
    public static String part(String name) {
        return URLEncoder.encode(name, UTF_8).replace("+", "%20");
    }

    /** What stands on a button. */
    public static String label(Choice choice) {
        String words = choice.words();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
