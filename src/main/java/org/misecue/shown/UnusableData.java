package org.misecue.shown;

import java.nio.file.Path;

/** Language data that the recogniser refuses. */
final class UnusableData extends RuntimeException {

    private static final long serialVersionUID = 1L;

    UnusableData(Path folder) {
        super("the recogniser refuses the language data in " + folder);
    }
}
