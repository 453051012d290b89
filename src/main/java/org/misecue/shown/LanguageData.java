package org.misecue.shown;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/**
 * Where Tesseract's data for English lies. Finding it loads nothing.
 *
 * @param folder holds {@code eng.traineddata}
 */
public record LanguageData(Path folder) {

    static final String LANGUAGE = "eng";
    private static final String FILE = LANGUAGE + ".traineddata";

    /** The folders of Debian's and Fedora's packages, of Tesseract's own build, of Homebrew; from memory. */
    private static final List<String> USUAL = List.of(
            "/usr/share/tesseract-ocr/*/tessdata",
            "/usr/share/tesseract-ocr/tessdata",
            "/usr/share/tessdata",
            "/usr/share/tesseract/tessdata",
            "/usr/local/share/tessdata",
            "/opt/homebrew/share/tessdata",
            "/opt/local/share/tessdata");

    /**
     * Looks in the usual places; {@code TESSDATA_PREFIX} comes first.
     *
     * @param environment the environment's variables
     */
    public static Optional<LanguageData> find(Map<String, String> environment) {
        return find(environment, Path.of("/"));
    }

    static Optional<LanguageData> find(Map<String, String> environment, Path root) {
        List<Path> places = new ArrayList<>();
        variable(environment, "TESSDATA_PREFIX").ifPresent(prefix -> {
            places.add(prefix);
            places.add(prefix.resolve("tessdata"));
        });
        for (String usual : USUAL) {
            places.addAll(folders(root, usual.substring(1)));
        }
        for (String programs : List.of("ProgramFiles", "LOCALAPPDATA")) {
            variable(environment, programs).ifPresent(folder -> {
                places.add(folder.resolve("Tesseract-OCR").resolve("tessdata"));
                places.add(folder.resolve("Programs").resolve("Tesseract-OCR").resolve("tessdata"));
            });
        }
        return places.stream()
                .filter(place -> Files.isReadable(place.resolve(FILE)))
                .map(LanguageData::new)
                .findFirst();
    }

    /** What to tell where it is not found. */
    public static Note missing(String film) {
        return new Note(
                Place.of(film),
                "text in the picture is not read, because Tesseract's language data (" + FILE
                        + ") is not found; install it (Debian: tesseract-ocr-eng) or name its folder in TESSDATA_PREFIX");
    }

    private static Optional<Path> variable(Map<String, String> environment, String name) {
        try {
            return Optional.ofNullable(environment.get(name))
                    .filter(value -> !value.isBlank())
                    .map(Path::of);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** A place, or every one that its star stands for, the last by name first: versions are named upwards. */
    private static List<Path> folders(Path root, String place) {
        int star = place.indexOf('*');
        if (star < 0) {
            return List.of(root.resolve(place));
        }
        Path above = root.resolve(place.substring(0, star));
        List<Path> found = new ArrayList<>();
        if (Files.isDirectory(above)) {
            try (DirectoryStream<Path> folders = Files.newDirectoryStream(above)) {
                folders.forEach(folder -> found.add(folder.resolve(place.substring(star + 2))));
            } catch (IOException e) {
                return List.of();
            }
        }
        found.sort(Collections.reverseOrder());
        return found;
    }
}
