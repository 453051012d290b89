package org.misecue.desk.common;

import io.javalin.Javalin;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;

/** Closes the desk from a page: whoever opened it by a click has no terminal to stop it in. */
public final class Closing implements Station {

    /** The answer goes out first. */
    private static final int MILLIS = 300;

    private final Runnable close;

    /** @param close what is done soon after somebody asked for it */
    public Closing(Runnable close) {
        this.close = close;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.post("/close", request -> {
            Answer.sentence(request, 200, "The desk is closed. What it confirmed is kept; you may close this window.");
            CompletableFuture.delayedExecutor(MILLIS, TimeUnit.MILLISECONDS).execute(close);
        });
    }
}
