package org.misecue.episode;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** A folder of the episode that results may be written to: {@code out/} or {@code .misecue/}, and nowhere outside it. */
public final class OutFolder {

    private final Path episode;
    private final String name;

    OutFolder(Path episode, String name) {
        this.episode = episode;
        this.name = name;
    }

    public Path folder() {
        return episode.resolve(name);
    }

    /** Where a result lies or would lie; nothing is made. */
    public Path path(String file) {
        return folder().resolve(file);
    }

    /** A result as the person knows it: {@code out/prep.html}. */
    public String name(String file) {
        return name + "/" + file;
    }

    /** @throws BadInput if it cannot be written; what stood there before stays */
    public Path write(String file, String text) {
        return write(file, text.getBytes(UTF_8));
    }

    /** @throws BadInput if it cannot be written; what stood there before stays */
    public Path write(String file, byte[] bytes) {
        Path target = ready(file);
        WholeFile.write(target, name(file), bytes);
        return target;
    }

    /** @throws BadInput if it cannot be written; what stood there before stays */
    public Path make(String file, WholeFile.Filler filler) {
        Path target = ready(file);
        WholeFile.make(target, name(file), filler);
        return target;
    }

    /**
     * The folder itself, made where it is missing.
     *
     * @throws BadInput if it cannot be made, or a link leads out of the episode
     */
    public Path ready() {
        Path folder = folder();
        check(folder, name);
        return folder;
    }

    private Path ready(String file) {
        Path target = folder().resolve(file).normalize();
        if (!target.startsWith(folder())) {
            throw new BadInput(Place.of(name(file)), "results stay inside " + name + "/; choose a name without “..”.");
        }
        ready();
        Path parent = target.getParent();
        if (parent != null) {
            check(parent, name + "/" + folder().relativize(parent));
        }
        return target;
    }

    /** Makes the folder; each part of the way must be a real folder of the episode, never a link to elsewhere. */
    private void check(Path folder, String shown) {
        try {
            Path step = episode;
            for (Path part : episode.relativize(folder)) {
                step = step.resolve(part);
                if (Files.isSymbolicLink(step) && !step.toRealPath().startsWith(episode.toRealPath())) {
                    throw new BadInput(
                            Place.of(shown), "this link leads out of the episode; put a real folder in its place.");
                }
                if (Files.exists(step, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(step)) {
                    throw new BadInput(
                            Place.of(shown), "a file stands where results go; move it away or give it another name.");
                }
                if (!Files.isDirectory(step)) {
                    Files.createDirectory(step);
                }
            }
        } catch (IOException e) {
            throw WholeFile.unwritable(shown, e);
        }
    }
}
