package org.misecue.desk.find;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.util.Map;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;

/** The page on which a moment is found in all episodes of an archive; each leads to the page of its episode. */
public final class ArchivePage implements Station {

    @Override
    public void open(Javalin server, Counter counter) {
        ArchiveFinder finder = new ArchiveFinder(counter.folder(), counter.home());
        server.get("/find", request -> page(request, counter, finder));
        server.get("/find/moments", request -> moments(request, counter, finder));
        server.get("/find/indexing", request -> indexing(request, counter, finder));
    }

    private static void page(Context request, Counter counter, ArchiveFinder finder) {
        checkArchive(counter);
        finder.freshen();
        Answer.page(
                request,
                View.of(request, "Find in all episodes", "find.js"),
                "desk/find/archive.jte",
                Map.of("found", found(Words.of(request), finder), "indexing", finder.indexing()));
    }

    private static void moments(Context request, Counter counter, ArchiveFinder finder) {
        checkArchive(counter);
        Answer.piece(request, "desk/find/moments.jte", Map.of("found", found(Words.of(request), finder)));
    }

    private static void indexing(Context request, Counter counter, ArchiveFinder finder) {
        checkArchive(counter);
        Indexing indexing = finder.indexing();
        if (!indexing.running()) {
            // What is shown was found before the rest was there.
            request.header("HX-Trigger", "indexed");
        }
        Answer.piece(request, "desk/find/indexing.jte", Map.of("indexing", indexing));
    }

    private static Found found(String words, ArchiveFinder finder) {
        return words.isEmpty()
                ? Found.NOTHING_ASKED
                : Found.of(words, most -> finder.find(words, most), hit -> FoundMoment.inArchive(hit, words));
    }

    private static void checkArchive(Counter counter) {
        if (!counter.isArchive()) {
            throw new Refusal(404, "There is one episode on this desk, and no others to look through.");
        }
    }
}
