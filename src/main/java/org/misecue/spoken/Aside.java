package org.misecue.spoken;

/**
 * Why an amount measures nothing in this recipe.
 *
 * @param kind the sort of aside
 * @param reason for people, as the end of "this is …": "a price"
 */
public record Aside(Kind kind, String reason) {

    /** The sorts of aside. */
    public enum Kind {
        PRICE,
        PACK_SIZE,
        TIME,
        /** A count of something that is no ingredient: "three bowls". */
        COUNT,
        AGE,
        YEAR,
        DRINK,
        /** The number of a thing: "speed four". */
        NAMED,
        /** How hot or when, without its unit. */
        LEVEL,
        /** So much at a time, on each piece: part of an amount, not an amount. */
        PORTION,
        /** What a scoop holds, what a jug takes. */
        CAPACITY,
        DENIED,
        /** Considered and dropped: "I was thinking four". */
        THOUGHT,
        OTHER_PEOPLE,
        OTHER_TIME,
        ALTERNATIVE
    }

    static final Aside SOMEBODY_ELSES = new Aside(Kind.OTHER_PEOPLE, "what somebody else does");

    static Aside of(Kind kind, String reason) {
        return new Aside(kind, reason);
    }
}
