package org.misecue.decide;

/** How far a matter has come. */
public enum State {
    UNDECIDED("undecided"),
    /** It was decided on, but what was said, shown or written has changed since. */
    STALE("decided before it changed: decide again"),
    /** Decided, and something is still to be done: filmed, cut, written. */
    TO_DO("decided, to be done"),
    /** Decided, and nothing is left to do. */
    SETTLED("decided");

    private final String words;

    State(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether somebody still has to decide. */
    public boolean isOpen() {
        return this == UNDECIDED || this == STALE;
    }
}
