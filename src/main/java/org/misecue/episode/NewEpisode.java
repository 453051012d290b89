package org.misecue.episode;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Makes the folder of a new episode around a recipe file. Nothing that exists is ever written over. */
public final class NewEpisode {

    private static final String SETTINGS = "episode.yaml";
    private static final int LONGEST_SETTINGS = 64 * 1024;

    private NewEpisode() {}

    /**
     * @param recipe an existing recipe file; it is copied and stays where it is
     * @param folder missing or empty
     * @param shown the folder as the person named it
     * @throws BadInput if the folder has anything in it or cannot be written
     */
    public static void make(Path recipe, String title, Path folder, String shown) {
        try {
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw new BadInput(Place.of(shown), "a file has this name already; choose another for the episode.");
            }
            Files.createDirectories(folder);
            if (hasContents(folder)) {
                throw new BadInput(
                        Place.of(shown), "this folder has something in it already; choose a new or an empty one.");
            }
            Files.copy(recipe, folder.resolve("recipe" + ending(recipe)));
            Files.writeString(
                    folder.resolve(SETTINGS), FirstSettings.of(title).text(), UTF_8, StandardOpenOption.CREATE_NEW);
            Files.createDirectory(folder.resolve("narration"));
            Files.createDirectory(folder.resolve("footage"));
        } catch (FileAlreadyExistsException e) {
            throw new BadInput(Place.of(shown), "a file is in the way of the new folder; choose another name.", e);
        } catch (IOException e) {
            throw WholeFile.unwritable(shown, e);
        }
    }

    /** The settings of an episode as they were first written; empty once anybody wrote them otherwise by hand. */
    public static Optional<FirstSettings> settings(Path folder) {
        Path file = folder.resolve(SETTINGS);
        try {
            return Files.isRegularFile(file) && Files.size(file) <= LONGEST_SETTINGS
                    ? FirstSettings.read(Files.readString(file))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Writes first settings in the place of first settings.
     *
     * @throws BadInput if somebody wrote others by hand, which stay
     */
    public static void settle(Path folder, FirstSettings settings) {
        if (settings(folder).isEmpty()) {
            throw new BadInput(
                    Place.of(SETTINGS),
                    "the settings were changed by hand since; change them in this file from now on.");
        }
        WholeFile.write(folder.resolve(SETTINGS), SETTINGS, settings.text().getBytes(UTF_8));
    }

    /** A folder name from a title: {@code plum-and-almond-plait}. */
    public static String folderName(String title) {
        String name = title.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return name.isEmpty() ? "episode" : name;
    }

    private static boolean hasContents(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isPresent();
        }
    }

    private static String ending(Path recipe) {
        String name = String.valueOf(recipe.getFileName());
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot).toLowerCase(Locale.ROOT);
    }
}
