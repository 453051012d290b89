package org.misecue.desk.counter;

import io.javalin.Javalin;

/** A part of the desk with addresses of its own. */
public interface Station {

    /**
     * Adds its addresses. One that names no {@link org.misecue.desk.door.Who} is for the owner alone.
     *
     * @param counter where the episodes are
     */
    void open(Javalin server, Counter counter);
}
