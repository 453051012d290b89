package org.misecue.search;

/** The fields in which words are indexed, just as they were said or written: other forms of a word are found when it is asked for. */
final class Terms {

    static final String SAID = "said";

    /** In the recipe, in the shot list or in the picture. */
    static final String WRITTEN = "written";

    static final String[] ALL = {SAID, WRITTEN};

    private Terms() {}

    static String field(Passage.Kind kind) {
        return kind == Passage.Kind.NARRATION ? SAID : WRITTEN;
    }
}
