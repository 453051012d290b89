package org.misecue.desk.common;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Door;
import org.misecue.desk.door.Refusal;
import org.misecue.desk.door.Who;

/** Where a device of the local network asks to come in. */
public final class GuestDoor implements Station {

    private final Door door;
    private final boolean lan;

    /** @param lan whether there is such a door at all */
    public GuestDoor(Door door, boolean lan) {
        this.door = door;
        this.lan = lan;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/join", this::ask, Who.PASSER_BY);
        server.post("/join", this::answer, Who.PASSER_BY);
    }

    private void ask(Context request) {
        checkOpen();
        Answer.page(request, View.of(request, "Come in"), "desk/join.jte", Map.of("wrong", false));
    }

    private void answer(Context request) {
        checkOpen();
        if (door.admit(request, Fields.raw(request, "code"))) {
            request.redirect("/", HttpStatus.SEE_OTHER);
            return;
        }
        request.status(HttpStatus.FORBIDDEN);
        Answer.page(request, View.of(request, "Come in"), "desk/join.jte", Map.of("wrong", true));
    }

    private void checkOpen() {
        if (!lan) {
            throw new Refusal(404, "This desk is not open to other devices; misecue desk --lan opens it.");
        }
    }
}
