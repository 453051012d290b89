package org.misecue.desk.check;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import org.misecue.decide.FixList;
import org.misecue.decide.PickupList;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;
import org.misecue.page.Pdf;
import org.misecue.worktop.Release;
import org.misecue.worktop.Worktop;

/** What comes of the decisions, for the others: made when somebody asks, and written nowhere. */
final class Lists implements Station {

    private static final String TEXT = "text/plain; charset=utf-8";

    private final Clock clock;

    Lists(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/check/pickups.txt", request -> request.contentType(TEXT)
                .result(PickupList.of(ready(counter, request).docket())));
        server.get("/e/{episode}/check/fixes.txt", request -> request.contentType(TEXT)
                .result(FixList.of(ready(counter, request).docket())));
        server.get("/e/{episode}/check/sign-off.pdf", request -> request.contentType("application/pdf")
                .result(sheet(ready(counter, request))));
    }

    private static Worktop ready(Counter counter, Context request) {
        return counter.episode(request).ready();
    }

    private byte[] sheet(Worktop worktop) {
        return Pdf.of(new Release(worktop).signOff(LocalDate.now(clock), doing -> {}));
    }
}
