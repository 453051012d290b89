package org.misecue.quantity;

/** What an amount measures. Amounts of different dimensions are never added or compared. */
public enum Dimension {
    MASS,
    VOLUME,
    COUNT,
    /** "A pinch", "a handful": too small or too loose to measure. */
    SMIDGEN,
    TEMPERATURE,
    DURATION,
    LENGTH
}
