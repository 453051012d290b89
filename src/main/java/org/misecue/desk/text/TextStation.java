package org.misecue.desk.text;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.OutFolder;
import org.misecue.worktop.PublishedFiles;
import org.misecue.worktop.Release;
import org.misecue.worktop.Worktop;

/** Shows what goes out, hands it over as files, and remembers that it went. */
public final class TextStation implements Station {

    private final Clock clock;

    /** @param clock for the day of publishing */
    public TextStation(Clock clock) {
        this.clock = clock;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/text", request -> page(request, counter, Optional.empty()));
        server.get("/e/{episode}/text/sheet", request -> sheet(request, counter.episode(request)));
        server.get("/e/{episode}/text/files/{file}", request -> file(request, counter.episode(request)));
        server.post("/e/{episode}/text/files", request -> make(request, counter.episode(request)));
        server.post("/e/{episode}/text/publish", request -> publish(request, counter));
    }

    private void page(Context request, Counter counter, Optional<Going> going) {
        OpenEpisode episode = counter.episode(request);
        Map<String, Object> values = new HashMap<>(Map.of("episode", episode, "going", going, "by", Fields.user()));
        values.put("today", LocalDate.now(clock).toString());
        values.put("sheet", episode.filmRead().map(this::sheetOf));
        Answer.page(
                request,
                View.of(request, counter, episode, Tab.TEXT, "producer.js", "text.js"),
                "desk/text/page.jte",
                values);
    }

    private TextSheet sheetOf(Worktop worktop) {
        return TextSheet.of(worktop, LocalDate.now(clock));
    }

    /** What is new since the page was drawn; nothing where it shows that already. */
    private void sheet(Context request, OpenEpisode episode) {
        Optional<TextSheet> sheet = episode.filmRead().map(this::sheetOf);
        if (sheet.isEmpty()) {
            Answer.piece(request, "desk/waiting.jte", Map.of("episode", episode, "again", episode.path("text/sheet")));
        } else if (sheet.get().mark().equals(request.queryParam("drawn"))) {
            request.status(HttpStatus.NO_CONTENT);
        } else {
            sheet(request, episode, sheet.get(), Optional.empty(), "");
        }
    }

    private void sheet(Context request, OpenEpisode episode, TextSheet sheet, Optional<Going> going, String told) {
        Map<String, Object> values = new HashMap<>(Map.of("episode", episode, "sheet", sheet, "going", going));
        values.put("today", LocalDate.now(clock).toString());
        values.put("told", told);
        Answer.piece(request, "desk/text/sheet.jte", values);
    }

    private static void file(Context request, OpenEpisode episode) {
        String name = request.pathParam("file");
        if (!PublishedFiles.NAMES.contains(name)) {
            throw new Refusal(404, "There is no such file; the page for the text names those that there are.");
        }
        request.contentType("application/octet-stream")
                .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
                .result(new PublishedFiles(episode.ready()).bytes(name));
    }

    private void make(Context request, OpenEpisode episode) {
        Worktop worktop = episode.ready();
        PublishedFiles files = new PublishedFiles(worktop);
        OutFolder out = worktop.episode().out();
        List<String> made = PublishedFiles.NAMES.stream()
                .peek(name -> out.write(name, files.bytes(name)))
                .map(out::name)
                .toList();
        done(request, episode, sheetOf(worktop), "Made " + String.join(", ", made) + ".");
    }

    /** First shown as it will be, then remembered. */
    private void publish(Context request, Counter counter) {
        OpenEpisode episode = counter.episode(request);
        Worktop worktop = episode.ready();
        TextSheet sheet = sheetOf(worktop);
        Going going = Going.of(request, sheet);
        if (!sheet.mark().equals(going.seen())) {
            throw new Refusal(
                    409,
                    "What goes out has changed since you looked, or somebody published it meanwhile; look at it again. Nothing was remembered.");
        }
        if (going.sure()) {
            new Release(worktop).remember(going.on(), going.by(), going.anyway(), before -> {
                if (before.size() != sheet.published().size()) {
                    throw new Refusal(
                            409, "Somebody published it meanwhile; look at it again. Nothing was remembered.");
                }
            });
            done(request, episode, sheetOf(worktop), "It counts as published on " + going.on() + ".");
        } else if (Answer.isPiece(request)) {
            sheet(request, episode, sheet, Optional.of(going), "");
        } else {
            page(request, counter, Optional.of(going));
        }
    }

    private void done(Context request, OpenEpisode episode, TextSheet sheet, String told) {
        if (Answer.isPiece(request)) {
            sheet(request, episode, sheet, Optional.empty(), told);
        } else {
            request.redirect(episode.path("text"), HttpStatus.SEE_OTHER);
        }
    }
}
