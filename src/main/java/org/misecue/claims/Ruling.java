package org.misecue.claims;

/** What the known ingredients say to a claim; the gravest first. None of them means that the claim holds. */
public enum Ruling {
    /** An ingredient contains what the claim denies. */
    CONTRADICTED("contradicted"),
    /** Nobody can tell from here: a label, a choice, an unknown ingredient, traces, a matter for a doctor. */
    UNKNOWABLE("unknowable"),
    /** Nothing that is known here contradicts it, which is no proof. */
    NOT_CONTRADICTED("not contradicted");

    private final String code;

    Ruling(String code) {
        this.code = code;
    }

    /** The name in documents. */
    public String code() {
        return code;
    }
}
