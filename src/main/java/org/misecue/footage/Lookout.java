package org.misecue.footage;

import java.time.Duration;

/** Looks on while a film is being made. */
@FunctionalInterface
public interface Lookout {

    /** Called now and then with how far the film is made; says whether to go on. */
    boolean goOn(Duration at);
}
