package org.misecue.desk;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that ask a desk over a copy of the sample, as its owner. */
public abstract class OverSample {

    @TempDir
    protected Path temp;

    /** The copy; a test may change it. */
    protected Path folder;

    protected OpenDesk desk;

    @BeforeEach
    void a_desk_is_open() {
        folder = OpenDesk.sample(temp);
        desk = OpenDesk.over(folder).enter();
    }

    @AfterEach
    void and_closed() {
        desk.close();
    }
}
