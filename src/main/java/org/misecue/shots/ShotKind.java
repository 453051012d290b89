package org.misecue.shots;

import java.util.Locale;

/** What a shot is for. */
public enum ShotKind {
    /** Shows where and with what: the kitchen, the line-up, the welcome. */
    ESTABLISHING,
    /** Shows the work; without it a step is missing. */
    ACTION,
    /** A short shot to cut away to, filmed when time allows. */
    PICKUP,
    /** Shows the finished dish. */
    REVEAL;

    /** Its name in templates and in the JSON document. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
