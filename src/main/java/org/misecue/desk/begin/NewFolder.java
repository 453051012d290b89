package org.misecue.desk.begin;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.misecue.desk.door.Refusal;

/** Where the folder of a new episode comes to lie. */
final class NewFolder {

    private static final int MOST_NUMBER = 999;

    private NewFolder() {}

    /**
     * Moves a finished folder to a name where nothing is: the wished one, or one with a number.
     *
     * @throws Refusal if none is left
     */
    static Path settle(Path part, Path archive, String wish) throws IOException {
        String name = SafeName.of(wish);
        for (int number = 1; number <= MOST_NUMBER; number++) {
            String numbered = number == 1 ? name : name + "-" + number;
            if (!Taken.is(archive, numbered) && move(part, archive.resolve(numbered))) {
                return archive.resolve(numbered);
            }
        }
        throw new Refusal(409, name + ": there are very many folders of this name; give the recipe another title.");
    }

    /** A folder is never moved over one that has anything in it, whoever comes first. */
    private static boolean move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            return true;
        } catch (IOException e) {
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
                return false;
            }
            throw e;
        }
    }

    static Refusal unwritable(Path archive) {
        return new Refusal(
                409,
                "Nothing can be made in " + archive + ": it may be full, or not yours to write in; open the desk over"
                        + " another folder.");
    }
}
