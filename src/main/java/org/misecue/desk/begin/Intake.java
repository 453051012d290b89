package org.misecue.desk.begin;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import java.util.function.Function;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FileKind;
import org.misecue.episode.Parts;

/**
 * Takes files in as they come: straight onto the disk where they are to lie, under a name that nobody counts until they are
 * whole. What is cut off leaves nothing.
 */
final class Intake {

    private static final int MOST_AT_ONCE = 4;
    private static final int PIECE = 1 << 16;

    /** How often the disk is asked whether there is room left. */
    private static final long ASK_EVERY = 64L << 20;

    private final Room room;
    private final Semaphore places = new Semaphore(MOST_AT_ONCE);
    private final Set<Path> coming = ConcurrentHashMap.newKeySet();

    Intake(Room room) {
        this.room = room;
    }

    /**
     * @param folder where the file is to lie
     * @param use is given the file once it is whole; what it does not move away is thrown away
     * @throws Refusal if it is too large, the disk is full, it breaks off, or too many come at once
     */
    <T> T take(Incoming file, Path folder, Function<Path, T> use) {
        if (!places.tryAcquire()) {
            throw new Refusal(
                    429, MOST_AT_ONCE + " files are coming in already; add this one when one of them is done.");
        }
        Parts.sweep(folder);
        Path part = Parts.in(folder, file.ending());
        try {
            write(file, folder, part);
            return use.apply(part);
        } finally {
            Parts.discard(part);
            places.release();
        }
    }

    /**
     * As {@link #take}, for a file that only has to be moved to its place.
     *
     * @param check throws what is wrong with the whole file
     * @throws Refusal if there is such a file, or one of this name is on its way
     */
    void keep(Incoming file, Path target, Consumer<Path> check) {
        Path folded = target.resolveSibling(SafeName.folded(file.name()));
        if (!coming.add(folded)) {
            throw taken(file);
        }
        try {
            Path folder = target.resolveSibling("");
            Taken.refuse(folder, file.name());
            take(file, folder, part -> {
                check.accept(part);
                settle(part, target, file);
                return part;
            });
        } finally {
            coming.remove(folded);
        }
    }

    /** A second name for the same file never writes over anything; some disks have no second names. */
    private static void settle(Path part, Path target, Incoming file) {
        Taken.refuse(target.resolveSibling(""), file.name());
        try {
            try {
                Files.createLink(target, part);
            } catch (FileAlreadyExistsException e) {
                throw e;
            } catch (UnsupportedOperationException | IOException e) {
                Files.move(part, target);
            }
        } catch (FileAlreadyExistsException e) {
            throw taken(file);
        } catch (IOException e) {
            throw full(file);
        }
    }

    private static Refusal taken(Incoming file) {
        return new Refusal(409, Taken.sentence(file.name()));
    }

    private void write(Incoming file, Path folder, Path part) {
        long most = room.most(file.kind(), folder);
        if (file.announced() > most) {
            throw tooLarge(file, most);
        }
        try (OutputStream out = Files.newOutputStream(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            byte[] piece = new byte[PIECE];
            long bytes = 0;
            long asked = 0;
            for (int read = read(file, piece); read >= 0; read = read(file, piece)) {
                bytes += read;
                if (bytes > most) {
                    throw tooLarge(file, most);
                }
                if (bytes - asked > ASK_EVERY) {
                    asked = bytes;
                    askForRoom(file, folder);
                }
                out.write(piece, 0, read);
            }
        } catch (IOException e) {
            throw full(file);
        }
    }

    private void askForRoom(Incoming file, Path folder) throws IOException {
        if (file.kind() == FileKind.FILM && room.free(folder) < Room.RESERVE) {
            throw full(file);
        }
    }

    private static int read(Incoming file, byte[] piece) {
        try {
            return file.body().read(piece);
        } catch (IOException e) {
            throw new Refusal(
                    400, file.name() + ": this broke off on its way, and nothing of it was kept; add it again.");
        }
    }

    private static Refusal tooLarge(Incoming file, long most) {
        return new Refusal(413, Look.tooLarge(file.name(), file.kind(), most));
    }

    private static Refusal full(Incoming file) {
        return new Refusal(
                413,
                file.name() + ": the disk took no more of it, and nothing of it was kept; make room and add it again.");
    }
}
