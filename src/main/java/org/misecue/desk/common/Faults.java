package org.misecue.desk.common;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.channels.ClosedChannelException;
import java.nio.file.Files;
import org.eclipse.jetty.io.EofException;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Refusal;
import org.misecue.notice.BadInput;

/** What is said when something is wrong: one sentence, never a stack trace. */
public final class Faults implements Station {

    private static final int BAD_INPUT = 422;

    @Override
    public void open(Javalin server, Counter counter) {
        server.exception(Refusal.class, (e, request) -> Answer.sentence(request, e.status(), text(e)));
        server.exception(BadInput.class, (e, request) -> Answer.sentence(request, BAD_INPUT, text(e)));
        server.exception(HttpResponseException.class, Faults::http);
        server.exception(Exception.class, (e, request) -> ours(e, request, counter));
    }

    private static void http(HttpResponseException e, Context request) {
        String sentence =
                switch (e.getStatus()) {
                    case 404 -> "There is nothing at this address; go back to the first page.";
                    case 405 -> "This address cannot be used like that; go back to the page before.";
                    case 413 -> "That is too large; send less at once.";
                    default -> "The desk does not understand this; load the page again.";
                };
        Answer.sentence(request, e.getStatus(), sentence);
    }

    private static void ours(Exception e, Context request, Counter counter) {
        if (e instanceof EofException || e instanceof ClosedChannelException) {
            return; // whoever asked hung up, or the desk is being closed
        }
        Answer.sentence(
                request,
                500,
                "The desk met something it was not made for; this is a fault of misecue, not of your files. Details: "
                        + kept(e, request, counter));
    }

    private static String kept(Exception e, Context request, Counter counter) {
        StringWriter details = new StringWriter();
        e.printStackTrace(new PrintWriter(details, true));
        if (request.pathParamMap().containsKey("episode")) {
            try {
                return org.misecue.episode.Episode.locate(
                                counter.episode(request).folder())
                        .state()
                        .write("fault.txt", details.toString())
                        .toString();
            } catch (BadInput | Refusal unwritable) {
                // then they are kept elsewhere
            }
        }
        try {
            return Files.writeString(Files.createTempFile("misecue-fault", ".txt"), details.toString())
                    .toString();
        } catch (IOException unwritable) {
            return "cannot be kept, because no file can be written.";
        }
    }

    private static String text(Exception e) {
        return String.valueOf(e.getMessage());
    }
}
