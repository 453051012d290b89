package org.misecue.episode;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/** One episode's folder. */
public final class Episode {

    private final Path folder;
    private final Path recipe;
    private final List<Path> narration;
    private final List<Path> footage;
    private final List<Note> notes;
    private @Nullable EpisodeSettings settings;

    Episode(Path folder, Path recipe, List<Path> narration, List<Path> footage, List<Note> notes) {
        this.folder = folder;
        this.recipe = recipe;
        this.narration = narration;
        this.footage = footage;
        this.notes = notes;
    }

    /** @throws BadInput if this is no folder, has no recipe or two, or its settings are wrong */
    public static Episode open(Path folder) {
        Episode episode = locate(folder);
        episode.settings();
        return episode;
    }

    /**
     * As {@link #open}, but the settings are not read before they are asked for: for whoever only looks something up.
     *
     * @throws BadInput if this is no folder, or has no recipe or two
     */
    public static Episode locate(Path folder) {
        return new EpisodeFinder(folder).find();
    }

    /** As the person named it, absolute or not. */
    public Path folder() {
        return folder;
    }

    /** The one recipe file. */
    public Path recipe() {
        return recipe;
    }

    /** The narrations in {@code narration/}, by name. */
    public List<Path> narration() {
        return narration;
    }

    /** The films in {@code footage/}, by name. */
    public List<Path> footage() {
        return footage;
    }

    /** Files that were left aside. */
    public List<Note> notes() {
        return notes;
    }

    /**
     * What {@code episode.yaml} says, or what is usual.
     *
     * @throws BadInput with line and column where anything in it is wrong
     */
    public EpisodeSettings settings() {
        EpisodeSettings known = settings;
        if (known == null) {
            Path file = folder.resolve("episode.yaml");
            known = Files.exists(file) ? SettingsReader.read(file, "episode.yaml") : EpisodeSettings.DEFAULT;
            NarrationForm.check(known.offsets(), names(narration), names(footage));
            settings = known;
        }
        return known;
    }

    private static List<String> names(List<Path> files) {
        return files.stream().map(file -> String.valueOf(file.getFileName())).toList();
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
