package org.misecue.scale;

/** The base of a tin. */
public enum TinShape {
    ROUND,
    SQUARE,
    /** Oblong tins and loaf tins, by length and width. */
    RECTANGLE
}
