package org.misecue.footage;

import java.util.Optional;

/**
 * What both heard while they ran together by their time codes. Clocks that run freely write the same time on other days.
 *
 * @param fit the line on which the same was heard; empty where there is none
 * @param clear at how many places both sounds stand out enough for the same to be found
 * @param alike at how many of these it was found
 */
record Testimony(Optional<Fit> fit, int clear, int alike) {

    /** Two microphones that heard one voice were alike wherever it went up and down by more, in decibels; measured. */
    static final double CLEAR = 5;

    private static final int FEWEST = 6;

    /** Chance makes one place in fifty alike, measured; a quarter is the whole kitchen in one ear and a fan at the other. */
    private static final int ONE_IN = 4;

    /** Whether it cannot have been the same room at the same time. */
    boolean denies() {
        return clear >= FEWEST && ONE_IN * alike < clear;
    }
}
