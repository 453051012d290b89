package org.misecue.search;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.store.LockObtainFailedException;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * Where an index lies.
 *
 * @param owner the episode or the archive, as the person knows it
 */
record IndexPlace(Path folder, String owner) {

    /** In an episode or an archive. */
    static IndexPlace in(Path owner) {
        String name = owner.toString();
        return new IndexPlace(owner.resolve(".misecue").resolve("index"), name.isEmpty() ? "this folder" : name);
    }

    interface Writing {
        void write() throws IOException;
    }

    /** Writes the whole index anew, which keeps the old one until it is done, if that can be read. */
    void anew(Writing writing) throws IOException {
        Files.createDirectories(folder);
        try {
            writing.write();
        } catch (CorruptIndexException | IndexFormatTooOldException | IndexFormatTooNewException e) {
            clear(); // what was there could not be searched any more
            writing.write();
        }
    }

    private void clear() throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                Files.delete(file);
            }
        }
    }

    BadInput unwritable(IOException e) {
        return e instanceof LockObtainFailedException
                ? new BadInput(Place.of(owner), "its index is just being made by another misecue; wait for it", e)
                : new BadInput(Place.of(owner), "its index cannot be written; check that .misecue is writable", e);
    }

    BadInput unreadable(IOException e) {
        return new BadInput(Place.of(owner), "its index cannot be read; make it anew with: index", e);
    }

    BadInput missing(IOException e) {
        return new BadInput(Place.of(owner), "there is no index yet; make it with: index", e);
    }
}
