package org.misecue.desk.begin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FileKind;

/** Whether a folder has a file of a name already, or of one that some file system takes for the same. */
final class Taken {

    private Taken() {}

    /** Links that lead nowhere count too. */
    static boolean is(Path folder, String name) {
        String folded = SafeName.folded(name);
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(
                    file -> SafeName.folded(String.valueOf(file.getFileName())).equals(folded));
        } catch (IOException e) {
            return Files.exists(folder.resolve(name));
        }
    }

    /** The name of a file that may be of this kind, if there is one. */
    static Optional<String> any(Path folder, FileKind kind) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> !name.startsWith(".") && kind.mayBe(name))
                    .sorted()
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** @throws Refusal if it has */
    static void refuse(Path folder, String name) {
        if (is(folder, name)) {
            throw new Refusal(409, sentence(name));
        }
    }

    static String sentence(String name) {
        return name + ": there is a file of this name already, and it stays as it is; add this one under another name.";
    }
}
