package org.misecue.desk.door;

import io.javalin.http.Context;
import io.javalin.security.RouteRole;

/** Who asks. An address names the least that may come; one that names nobody is for the owner alone. */
public enum Who implements RouteRole {
    /** Anybody who can reach the desk: for what holds nothing of an episode, such as the stylesheet. */
    PASSER_BY,
    /** A device of the local network that was let in with a code: bowls and day. */
    GUEST,
    /** Whoever started the desk. */
    OWNER;

    private static final String ATTRIBUTE = "who";

    /** Whoever sent this request. */
    public static Who of(Context request) {
        Who who = request.attribute(ATTRIBUTE);
        return who == null ? PASSER_BY : who;
    }

    void remember(Context request) {
        request.attribute(ATTRIBUTE, this);
    }

    boolean mayPass(RouteRole least) {
        return least instanceof Who who && compareTo(who) >= 0;
    }
}
