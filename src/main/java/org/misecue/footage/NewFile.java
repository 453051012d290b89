package org.misecue.footage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** A file that appears whole or not at all. */
final class NewFile {

    /** Writes a file's content at the place it is given. */
    @FunctionalInterface
    interface Content {
        void writeTo(Path place) throws IOException;
    }

    private NewFile() {}

    /** Has the content written beside the file under another name and moves it there when it is done. */
    static void write(Path file, Content content) {
        Path target = file.toAbsolutePath();
        Path unfinished = null;
        try {
            Path folder = target.getParent();
            Files.createDirectories(folder);
            String name = ".%s.unfinished-%d"
                    .formatted(target.getFileName(), ProcessHandle.current().pid());
            unfinished = target.resolveSibling(name);
            content.writeTo(unfinished);
            Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException | UncheckedIOException e) {
            throw new BadInput(
                    Place.of(file.toString()),
                    "this file cannot be written; check the folder's permissions and space",
                    e);
        } finally {
            remove(unfinished);
        }
    }

    private static void remove(@Nullable Path unfinished) {
        if (unfinished != null) {
            try {
                Files.deleteIfExists(unfinished);
            } catch (IOException e) {
                unfinished.toFile().deleteOnExit();
            }
        }
    }
}
