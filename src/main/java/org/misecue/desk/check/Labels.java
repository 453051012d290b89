package org.misecue.desk.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.UUID;
import org.misecue.episode.Choice;

/** Small words and addresses of the producer's pages. */
public final class Labels {

    private Labels() {}

    /** Where the row on a matter stands: the same as long as it is about the same, whatever comes before it. */
    public static String id(String about) {
        return "on-" + UUID.nameUUIDFromBytes(about.getBytes(UTF_8)).toString().substring(0, 13);
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
