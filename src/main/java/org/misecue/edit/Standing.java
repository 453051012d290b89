package org.misecue.edit;

/** How a shot of the list stands after filming, by what is said and by what films are called; nobody looks at pictures. */
public enum Standing {
    /** Its number is called before it, or stands in the film's name. */
    SLATED("slated", "In the film by their slate"),
    /** What belongs to it is said while its step is on. */
    SPOKEN("spoken", "Probably in the film: what belongs to them is said"),
    /** Its step is filmed, but no word tells whether this shot is. */
    LOOK("look", "Their step is in the film; whether they are, no word tells: look"),
    /** No film has its step. */
    MISSING("missing", "In no film");

    private final String code;
    private final String heading;

    Standing(String code, String heading) {
        this.code = code;
        this.heading = heading;
    }

    /** Its name in tables and JSON. */
    public String code() {
        return code;
    }

    /** Over the shots that stand so. */
    public String heading() {
        return heading;
    }
}
