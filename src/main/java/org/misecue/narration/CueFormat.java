package org.misecue.narration;

import java.util.List;

/** One way of writing a narration down. Adding a format is adding a class and naming it in {@link NarrationReader}. */
interface CueFormat {

    /** What people call it. */
    String name();

    /** With their dots, in lower case. */
    List<String> extensions();

    /** A whole example of the shortest readable cue, for messages. */
    String example();

    /** Whether the content itself shows that it is of this format. */
    boolean recognises(String text);

    /** Puts all readable cues on the sheet, and a note for each that is not. */
    void read(String text, CueSheet sheet);
}
