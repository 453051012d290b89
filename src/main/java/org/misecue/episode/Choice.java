package org.misecue.episode;

import java.util.Arrays;
import java.util.Optional;

/** What a producer decides about a difference. */
public enum Choice {
    /** The film stays as it is, and so does the recipe. */
    KEEP("keep", "keep as filmed"),
    /** The written recipe is wrong and is to be mended. */
    FIX("fix", "fix the recipe"),
    /** The line is to be filmed again. */
    PICKUP("pickup", "film a pick-up"),
    /** What is heard or seen is to be covered by right words on screen. */
    COVER("cover", "cover by a lower third");

    private final String code;
    private final String words;

    Choice(String code, String words) {
        this.code = code;
        this.words = words;
    }

    /** Its name in files and options. */
    public String code() {
        return code;
    }

    /** As one says it. */
    public String words() {
        return words;
    }

    /** By its name in files and options. */
    public static Optional<Choice> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code.equals(code)).findFirst();
    }
}
