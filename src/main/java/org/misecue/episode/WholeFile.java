package org.misecue.episode;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.atomic.AtomicInteger;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Writes a file whole or not at all: first beside its place, then moved there in one go. */
public final class WholeFile {

    /** What fills the file: it is given a path of the same folder and ending, where nothing stands yet. */
    public interface Filler {
        void fill(Path file) throws IOException;
    }

    private static final AtomicInteger COUNT = new AtomicInteger();

    private WholeFile() {}

    /** @throws BadInput if the place cannot be written; what stood there before stays */
    public static void write(Path target, String name, byte[] bytes) {
        make(target, name, file -> Files.write(file, bytes, StandardOpenOption.CREATE_NEW));
    }

    /**
     * @param name the target as the person knows it
     * @throws BadInput if the place cannot be written; what stood there before stays
     */
    public static void make(Path target, String name, Filler filler) {
        Path beside = target.resolveSibling(Parts.MARK + ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet()
                + "-" + target.getFileName());
        try {
            if (Files.isDirectory(target)) {
                throw new BadInput(Place.of(name), "a folder stands where this file goes; move it away.");
            }
            filler.fill(beside);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw unwritable(name, e);
        } finally {
            Parts.discard(beside);
        }
    }

    static BadInput unwritable(String name, IOException e) {
        return new BadInput(
                Place.of(name), "this cannot be written (" + reason(e) + "); free the place or choose another.", e);
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof FileSystemException fault && fault.getReason() != null) {
            return fault.getReason().toLowerCase(java.util.Locale.ROOT);
        }
        return e instanceof java.nio.file.NoSuchFileException ? "no such folder" : "the disk refused it";
    }
}
