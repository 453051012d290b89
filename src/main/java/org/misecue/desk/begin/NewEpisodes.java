package org.misecue.desk.begin;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FileKind;
import org.misecue.episode.NewEpisode;
import org.misecue.episode.Parts;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.worktop.OwnPantry;

/** Makes episodes in the folder that the desk was opened over: from a recipe, or the sample. */
final class NewEpisodes implements Station {

    /** Of a folder's name; a title may be a sentence. */
    private static final int LONGEST_NAME = 60;

    private final Intake intake;
    private final Room room;

    NewEpisodes(Intake intake, Room room) {
        this.intake = intake;
        this.room = room;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/new", request -> show(request, counter));
        server.post("/new/look", request -> look(request, counter));
        server.post("/new/recipe", request -> begin(request, counter));
        server.post("/new/sample", request -> sample(request, counter));
    }

    private void show(Context request, Counter counter) {
        Path archive = archive(counter);
        Answer.page(
                request,
                View.of(request, "New episode", "begin.js"),
                "desk/begin/new.jte",
                Map.of(
                        "limits",
                        Limits.of(room, archive),
                        "sample",
                        counter.names().contains(Sample.NAME),
                        "others",
                        !counter.names().isEmpty()));
    }

    private static Path archive(Counter counter) {
        if (!counter.isArchive()) {
            throw new Refusal(
                    404,
                    "This desk was opened over one episode; to begin another, open the desk over the folder above.");
        }
        return counter.folder();
    }

    private void look(Context request, Counter counter) {
        Replies.look(request, room, archive(counter), kind -> archive(counter).resolve(kind.folder()));
    }

    private void begin(Context request, Counter counter) {
        Path archive = archive(counter);
        Incoming file = Incoming.of(request);
        if (file.kind() != FileKind.RECIPE) {
            throw new Refusal(415, file.name() + ": an episode begins with its recipe; add this one afterwards.");
        }
        Path folder = intake.take(file, archive, part -> make(part, file.name(), counter));
        OpenEpisode episode = counter.episode(String.valueOf(folder.getFileName()));
        Replies.json(request, Map.of("next", episode.path("recipe"), "files", episode.path("files")));
    }

    /** What cannot be read as a recipe makes no folder. */
    private static Path make(Path file, String name, Counter counter) {
        Path archive = counter.folder();
        Recipe recipe = RecipeReader.read(file, name, new OwnPantry(counter.home(), archive).read());
        Path part = Parts.in(archive, "");
        try {
            NewEpisode.make(file, recipe.title(), part, name);
            String wish = NewEpisode.folderName(recipe.title());
            return NewFolder.settle(
                    part,
                    archive,
                    wish.codePointCount(0, wish.length()) > LONGEST_NAME
                            ? wish.substring(0, wish.offsetByCodePoints(0, LONGEST_NAME))
                            : wish);
        } catch (IOException e) {
            throw NewFolder.unwritable(archive);
        } finally {
            Parts.discard(part);
        }
    }

    /** One that was copied before is opened again: what was tried on it is kept. */
    private void sample(Context request, Counter counter) {
        Path archive = archive(counter);
        Path folder = counter.names().contains(Sample.NAME) ? archive.resolve(Sample.NAME) : Sample.copyInto(archive);
        request.redirect(counter.episode(String.valueOf(folder.getFileName())).path("bowls"), HttpStatus.SEE_OTHER);
    }
}
