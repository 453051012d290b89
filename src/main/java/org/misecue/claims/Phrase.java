package org.misecue.claims;

/**
 * Words in {@code [start, end)} of a stream that may be a claim: nobody has looked at what stands around them.
 *
 * @param form how it is put
 * @param doubtful whether the recogniser wrote another word
 */
record Phrase(int start, int end, Denial denial, Form form, boolean doubtful) {

    /** The ways of putting a claim. */
    enum Form {
        /** "dairy free", "free from dairy", "non dairy", "vegan". */
        QUALITY,
        /** "no dairy", "not a drop of milk". */
        NO,
        /** "contains no dairy", "doesn't contain any milk". */
        CONTAINS_NO,
        /** "isn't any egg", "hasn't got any eggs". */
        NOT_ANY,
        /** "without eggs". */
        WITHOUT,
        /** "suitable for coeliacs", "coeliac friendly". */
        SUITS,
        /** "if you're coeliac this is fine", "coeliacs can eat this". */
        MAY_EAT
    }
}
