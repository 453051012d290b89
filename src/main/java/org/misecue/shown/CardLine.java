package org.misecue.shown;

/**
 * One line of a card.
 *
 * @param text as read, in one line
 * @param doubtful whether the reading of its figures is not to be relied on: somebody has to look
 */
public record CardLine(String text, boolean doubtful) {}
