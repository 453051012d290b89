package org.misecue.desk.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLEncoder;
import org.misecue.episode.Choice;

/** Small words and addresses of the producer's pages. */
public final class Labels {

    private Labels() {}

    /** A file's name as a part of an address. */
    public static String part(String name) {
        return URLEncoder.encode(name, UTF_8).replace("+", "%20");
    }

    /** What stands on a button. */
    public static String of(Choice choice) {
        String words = choice.words();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** The key that presses it. */
    public static String key(Choice choice) {
        return choice.code().substring(0, 1);
    }
}
