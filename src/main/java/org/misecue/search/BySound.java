package org.misecue.search;

/** Which words may be found by words that sound alike. */
enum BySound {
    NONE,
    /** A recogniser that never wrote a word may have written another for it each time. */
    UNSAID,
    ALL
}
