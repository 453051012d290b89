package org.misecue.desk.counter;

import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Episode;
import org.misecue.notice.BadInput;
import org.misecue.shown.LanguageData;

/** The episodes that lie on the desk: one, or those of an archive. */
public final class Counter {

    private static final String NO_EPISODE = "There is no episode of this name on the desk; go back to the first page.";

    private final Path folder;
    private final Optional<Path> home;
    private final Supplier<Optional<LanguageData>> language;
    private final Map<String, OpenEpisode> open = new ConcurrentHashMap<>();

    /**
     * @param folder an episode, an archive of episodes, or one where nothing is yet; absolute
     * @param home where the person keeps what holds for every episode
     * @param language finds what text in pictures is read with
     */
    public Counter(Path folder, Optional<Path> home, Supplier<Optional<LanguageData>> language) {
        this.folder = folder;
        this.home = home;
        this.language = language;
    }

    /** What the desk was opened over. */
    public Path folder() {
        return folder;
    }

    /** Where the person keeps what holds for every episode. */
    public Optional<Path> home() {
        return home;
    }

    /** Whether it was opened over a folder of episodes, and not over one episode. */
    public boolean isArchive() {
        return !isEpisode(folder);
    }

    /** The names of the episodes, sorted; none where nothing is yet. */
    public List<String> names() {
        if (!isArchive()) {
            return List.of(String.valueOf(folder.getFileName()));
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(one -> !String.valueOf(one.getFileName()).startsWith("."))
                    .filter(Counter::isEpisode)
                    .map(one -> String.valueOf(one.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /**
     * The episode that an address names, as {@code {episode}} in its path.
     *
     * @throws Refusal if there is none of this name
     */
    public OpenEpisode episode(Context request) {
        return episode(request.pathParam("episode"));
    }

    /** @throws Refusal if there is none of this name */
    public OpenEpisode episode(String name) {
        OpenEpisode known = open.get(name);
        if (known != null && Files.isDirectory(known.folder())) {
            return known;
        }
        Path path = isArchive() ? child(name) : folder;
        if (!name.equals(String.valueOf(path.getFileName())) || !isEpisode(path)) {
            throw new Refusal(404, NO_EPISODE);
        }
        return open.computeIfAbsent(name, key -> new OpenEpisode(key, path, home, language));
    }

    /** A folder of the archive; no name leads anywhere else. */
    private Path child(String name) {
        try {
            Path path = folder.resolve(name);
            if (folder.equals(path.getParent()) && !name.startsWith(".")) {
                return path;
            }
        } catch (InvalidPathException e) {
            // no file has such a name
        }
        throw new Refusal(404, NO_EPISODE);
    }

    /** A folder with a recipe. One with two recipes is one too: its page says what to do. */
    private static boolean isEpisode(Path path) {
        if (!Files.isDirectory(path)) {
            return false;
        }
        try {
            Episode.locate(path);
            return true;
        } catch (BadInput e) {
            return Files.exists(path.resolve("episode.yaml"));
        }
    }
}
