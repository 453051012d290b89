package org.misecue.day;

/**
 * How long something may stand before the next work begins.
 *
 * @param minutes at most
 * @param why in a person's words
 */
record Hold(int minutes, String why) {}
