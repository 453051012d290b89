package org.misecue.shown;

import java.util.List;

/** Reads writing. */
interface Eye {

    /** What is written, from top to bottom; no lines where nothing is written. */
    List<ReadLine> read(Exposure part);
}
