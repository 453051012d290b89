package org.misecue.quantity;

/** The family of measures that a unit belongs to. Spoons stand in every kitchen and belong with metric here. */
public enum MeasureSystem {
    METRIC,
    /** Teaspoons and tablespoons, counted pieces, pinches and times: used alike with every other system. */
    SHARED,
    /** Ounces, pounds, cups, pints, sticks, inches, degrees Fahrenheit and gas marks. */
    HOUSEHOLD
}
