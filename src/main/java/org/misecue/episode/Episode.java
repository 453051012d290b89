package org.misecue.episode;

import java.nio.file.Path;
import java.util.List;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/**
 * One episode's folder.
 *
 * @param folder as the person named it, absolute or not
 * @param recipe the one recipe file
 * @param narration the files of {@code narration/} that are narrations, by name
 * @param footage the files of {@code footage/} that are films, by name
 * @param settings of {@code episode.yaml}
 * @param notes files that were left aside
 */
public record Episode(
        Path folder,
        Path recipe,
        List<Path> narration,
        List<Path> footage,
        EpisodeSettings settings,
        List<Note> notes) {

    /** @throws BadInput if this is no folder, has no recipe or two, or its settings are wrong */
    public static Episode open(Path folder) {
        return new EpisodeFinder(folder).find();
    }

    /** Everything that is made for people; safe to delete. */
    public OutFolder out() {
        return new OutFolder(folder, "out");
    }

    /** What the program keeps for itself: the index. */
    public OutFolder state() {
        return new OutFolder(folder, ".misecue");
    }

    /** A file of the episode as the person knows it, such as {@code narration/main.vtt}. */
    public String name(Path file) {
        Path inside = file.startsWith(folder) ? folder.relativize(file) : file;
        return inside.toString().replace('\\', '/');
    }
}
