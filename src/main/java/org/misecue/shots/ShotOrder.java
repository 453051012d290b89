package org.misecue.shots;

/** How a list is ordered. */
public enum ShotOrder {
    /** As viewers see it. */
    STORY,
    /** By set-up, as far as the food allows. */
    FILMING
}
