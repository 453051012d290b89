package org.misecue.episode;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * A folder of episodes. They may lie in folders of folders, such as one for each season.
 *
 * @param folder as the person named it
 */
public record Archive(Path folder) {

    /** So many folders deep; whatever lies deeper was not put there by hand, or is a link that goes round. */
    private static final int DEEPEST = 4;

    /** @throws BadInput if this is no folder, or an episode itself */
    public static Archive open(Path folder) {
        String shown = folder.toString().isEmpty() ? "." : folder.toString();
        if (!Files.isDirectory(folder)) {
            throw new BadInput(
                    Place.of(shown),
                    Files.exists(folder)
                            ? "this is a file, and an archive is a folder of episodes; name the folder."
                            : "there is no such folder; check the name.");
        }
        Archive archive = new Archive(folder.normalize());
        if (EpisodeFinder.isSurely(archive.folder)) {
            throw new BadInput(
                    Place.of(shown), "this is one episode, and an archive is a folder of them; name the one above it.");
        }
        return archive;
    }

    /** The folders of its episodes, in the order of their names. A folder that cannot be opened has none. */
    public List<Path> episodes() {
        return within(folder, DEEPEST).toList();
    }

    /**
     * The same where there must be some.
     *
     * @throws BadInput if there are none
     */
    public List<Path> someEpisodes() {
        List<Path> episodes = episodes();
        if (episodes.isEmpty()) {
            throw new BadInput(
                    Place.of(folder.toString()),
                    "there are no episodes in this folder; name the folder in which they lie.");
        }
        return episodes;
    }

    /** What the program keeps for itself: the index. */
    public OutFolder state() {
        return new OutFolder(folder, ".misecue");
    }

    /** An episode as the archive knows it, such as {@code season-2/plum-cake}. */
    public String name(Path episode) {
        return folder.relativize(episode).toString().replace('\\', '/');
    }

    private static Stream<Path> within(Path folder, int deepest) {
        return EpisodeFinder.files(folder).stream()
                .filter(Files::isDirectory)
                .flatMap(inside -> episodes(inside, deepest - 1));
    }

    /** A document beside folders of episodes, such as a README, makes no episode of the folder. */
    private static Stream<Path> episodes(Path folder, int deepest) {
        if (EpisodeFinder.isSurely(folder)) {
            return Stream.of(folder);
        }
        List<Path> inside = deepest > 0 && !Files.isSymbolicLink(folder)
                ? within(folder, deepest).toList()
                : List.of();
        return inside.isEmpty() && EpisodeFinder.hasDocument(folder) ? Stream.of(folder) : inside.stream();
    }
}
