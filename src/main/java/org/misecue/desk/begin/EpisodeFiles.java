package org.misecue.desk.begin;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.misecue.desk.counter.Answer;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.counter.Tab;
import org.misecue.desk.counter.View;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Episode;
import org.misecue.episode.FileKind;
import org.misecue.footage.Footage;
import org.misecue.narration.NarrationReader;
import org.misecue.notice.BadInput;
import org.misecue.recipe.RecipeReader;

/** What an episode is made of, and more for it. */
final class EpisodeFiles implements Station {

    private final Intake intake;
    private final Room room;
    private final Descriptions descriptions = new Descriptions();

    EpisodeFiles(Intake intake, Room room) {
        this.intake = intake;
        this.room = room;
    }

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/files", request -> show(request, counter, counter.episode(request)));
        server.get("/e/{episode}/files/list", request -> list(request, counter.episode(request)));
        server.post("/e/{episode}/files/look", request -> look(request, counter.episode(request)));
        server.put("/e/{episode}/files", request -> add(request, counter.episode(request)));
    }

    private void show(Context request, Counter counter, OpenEpisode episode) {
        Map<String, Object> values =
                Map.of("limits", Limits.of(room, episode.folder()), "inventory", Inventory.of(episode, descriptions));
        Answer.page(request, View.of(request, counter, episode, Tab.FILES, "begin.js"), "desk/begin/files.jte", values);
    }

    private void list(Context request, OpenEpisode episode) {
        Answer.piece(
                request,
                "desk/begin/inventory.jte",
                Map.of("episode", episode, "inventory", Inventory.of(episode, descriptions)));
    }

    private void look(Context request, OpenEpisode episode) {
        Replies.look(request, room, episode.folder(), kind -> {
            if (kind == FileKind.RECIPE) {
                refuseSecondRecipe(episode);
            }
            return episode.folder().resolve(kind.folder());
        });
    }

    private void add(Context request, OpenEpisode episode) {
        Incoming file = Incoming.of(request);
        Path folder = episode.folder();
        switch (file.kind()) {
            case RECIPE -> {
                refuseSecondRecipe(episode);
                intake.keep(file, folder.resolve(file.name()), part -> RecipeReader.read(part, file.name()));
            }
            case NARRATION ->
                intake.keep(
                        file,
                        ready(folder, file.kind()).resolve(file.name()),
                        part -> NarrationReader.read(part, file.name()));
            case FILM ->
                intake.keep(
                        file, ready(folder, file.kind()).resolve(file.name()), part -> checkFilm(part, file.name()));
        }
        Replies.json(request, Map.of("name", file.name()));
    }

    private static void refuseSecondRecipe(OpenEpisode episode) {
        recipe(episode.folder()).ifPresent(name -> {
            throw new Refusal(
                    409, "This episode has its recipe, " + name + "; change that file, or begin a new episode.");
        });
    }

    /** The name of the recipe that there is. */
    private static Optional<String> recipe(Path folder) {
        try {
            return Optional.of(String.valueOf(Episode.locate(folder).recipe().getFileName()));
        } catch (BadInput e) {
            return Taken.any(folder, FileKind.RECIPE);
        }
    }

    /** The folder for a kind of file, made where it is missing; a link may lead anywhere. */
    private static Path ready(Path episode, FileKind kind) {
        Path folder = episode.resolve(kind.folder());
        if (Files.isSymbolicLink(folder)) {
            throw new Refusal(
                    409,
                    kind.folder() + "/ is a link to another place; put the file there yourself, or make it a folder.");
        }
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(folder)) {
            throw new Refusal(409, "A file is called " + kind.folder() + ", where a folder should be; rename it.");
        }
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw NewFolder.unwritable(episode);
        }
    }

    /** The film is checked under a name that nobody knows, and complained of under its own. */
    private static void checkFilm(Path part, String name) {
        try {
            Footage.probe(part);
        } catch (BadInput e) {
            String sentence = String.valueOf(e.getMessage());
            throw new Refusal(422, sentence.replace(e.place().toString(), name) + ".");
        }
    }
}
