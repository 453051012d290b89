package org.misecue.worktop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;

/** The program's pantry with the person's own rows over it: first those at home, then those beside the recipe. */
public final class OwnPantry {

    private static final String FILE = "pantry.yaml";

    /** One file and how the person knows it. */
    private record Named(Path path, String name) {}

    private final List<Named> files = new ArrayList<>();
    private final Optional<Path> home;
    private final Optional<Path> folder;

    /** @param folder of the recipe */
    public OwnPantry(Optional<Path> home, Path folder) {
        this(home, Optional.of(folder));
    }

    private OwnPantry(Optional<Path> home, Optional<Path> folder) {
        this.home = home;
        this.folder = folder;
        home.map(path -> path.resolve(".misecue").resolve(FILE))
                .filter(Files::exists)
                .ifPresent(file -> files.add(new Named(file, file.toString())));
        folder.map(path -> path.resolve(FILE))
                .filter(Files::exists)
                .ifPresent(file -> files.add(new Named(file, FILE)));
    }

    /** What holds for every recipe. */
    static OwnPantry atHome(Optional<Path> home) {
        return new OwnPantry(home, Optional.empty());
    }

    /** Folders of the person's own that are looked for in the same places, by the names under which they are known. */
    public Map<String, Path> folders(String name) {
        Map<String, Path> folders = new LinkedHashMap<>();
        home.map(path -> path.resolve(".misecue").resolve(name)).ifPresent(path -> folders.put(path.toString(), path));
        folder.ifPresent(path -> folders.put(name, path.resolve(name)));
        return folders;
    }

    /** What the pantry depends on besides the program. */
    public List<Path> files() {
        return files.stream().map(Named::path).toList();
    }

    /** @throws BadInput with file and line at the first bad row */
    public Pantry read() {
        Pantry pantry = Pantry.standard();
        for (Named file : files) {
            pantry = over(pantry, file);
        }
        return pantry;
    }

    private static Pantry over(Pantry pantry, Named file) {
        try (InputStream in = Files.newInputStream(file.path())) {
            return pantry.with(file.name(), in);
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(
                    Place.of(file.name()), "the file cannot be read; check that it is a file you may open.", e);
        }
    }
}
