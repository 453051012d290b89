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

    /** Writes a file's content at the place it is given, and says whether it is whole. */
    @FunctionalInterface
    interface Content {
        boolean writeTo(Path place) throws IOException;
    }

    private NewFile() {}

    /**
     * Has the content written beside the file under another name and moves it there when it is done.
     *
     * @return whether it was whole; if not, the place is as it was before
     */
    static boolean write(Path file, Content content) {
        Path target = file.toAbsolutePath();
        Path unfinished = null;
        try {
            Path folder = target.getParent();
            Files.createDirectories(folder);
            String name = ".%s.unfinished-%d"
                    .formatted(target.getFileName(), ProcessHandle.current().pid());
            unfinished = target.resolveSibling(name);
            boolean whole = content.writeTo(unfinished);
            if (whole) {
                Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            }
            return whole;
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
