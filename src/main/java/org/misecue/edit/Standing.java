package org.misecue.edit;

import java.util.Locale;

/** How a shot of the list stands after filming, by what is said and by what films are called; nobody looks at pictures. */
public enum Standing {
    /** Its number is called before it, or stands in the film's name. */
    SLATED("slated", "In the film by their slate"),
    /** What belongs to it is said while its step is on. */
    SPOKEN("probably filmed", "Probably in the film: what belongs to them is said"),
    /** Its step is filmed, but no word tells whether this shot is. */
    LOOK("to look for", "Their step is in the film; whether they are, no word tells: look"),
    /** No film has its step. */
    MISSING("in no film", "In no film");

    private final String words;
    private final String heading;

    Standing(String words, String heading) {
        this.words = words;
        this.heading = heading;
    }

    /** Its name in tables and JSON. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** After a number of shots. */
    String words() {
        return words;
    }

    /** Over the shots that stand so. */
    String heading() {
        return heading;
    }
}
