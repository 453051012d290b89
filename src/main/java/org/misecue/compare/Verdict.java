package org.misecue.compare;

/** What became of a written quantity on camera. */
public enum Verdict {
    /** What the speaker finally commits to equals the written amount. */
    AGREES("agrees"),
    /** Hedged, or said in another system of measures, and within a tenth. */
    APPROXIMATE("approximate"),
    /** Anything else was said for it, or two amounts that contradict each other. */
    DIFFERS("differs"),
    /** Never said with an amount. */
    UNSPOKEN("unspoken");

    private final String code;

    Verdict(String code) {
        this.code = code;
    }

    /** The verdict's name in the JSON documents. */
    public String code() {
        return code;
    }
}
