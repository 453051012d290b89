package org.misecue.worktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.misecue.episode.Episode;
import org.misecue.episode.Parts;
import org.misecue.footage.Lookout;
import org.misecue.footage.Proxy;
import org.misecue.shown.ShownJson;

/** Smaller copies of films for browsers, kept in {@code .misecue/proxies/} for as long as the film is the same. */
public final class Proxies {

    /** Goes up whenever copies are made differently, so that those from before are made anew. */
    private static final String MAKING = "1-";

    private static final String FOLDER = "proxies";

    /** Whether a copy is of its film is asked often and costs a look into both files. */
    private final Map<Path, Known> known = new ConcurrentHashMap<>();

    private record Stamp(long size, FileTime changed) {

        static Stamp of(Path file) throws IOException {
            return new Stamp(Files.size(file), Files.getLastModifiedTime(file));
        }
    }

    private record Known(Stamp film, Stamp proxy, boolean fresh) {}

    /** The copy of a film; empty where none was made, or the film is another one now. */
    public Optional<Path> kept(Episode episode, Path film) {
        Path proxy = episode.state().path(file(film));
        if (!Files.isRegularFile(proxy)) {
            return Optional.empty();
        }
        try {
            Stamp filmNow = Stamp.of(film);
            Stamp proxyNow = Stamp.of(proxy);
            Known before = known.get(proxy);
            if (before == null || !before.film.equals(filmNow) || !before.proxy.equals(proxyNow)) {
                boolean fresh = Proxy.mark(proxy).filter(mark(film)::equals).isPresent();
                before = new Known(filmNow, proxyNow, fresh);
                known.put(proxy, before);
            }
            return before.fresh ? Optional.of(proxy) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty(); // it can be made again
        }
    }

    /**
     * Makes the copy of a film anew.
     *
     * @return whether the lookout let it be made to its end; if not, nothing is left behind
     * @throws org.misecue.notice.BadInput if the film cannot be used or the copy cannot be written
     */
    public boolean make(Episode episode, Path film, Lookout lookout) {
        String mark = mark(film);
        Parts.sweep(episode.state().path(FOLDER));
        try {
            episode.state().make(file(film), place -> {
                if (!Proxy.make(film, place, mark, lookout)) {
                    throw new Stopped();
                }
            });
            return true;
        } catch (Stopped e) {
            return false;
        }
    }

    private static String mark(Path film) {
        return MAKING + ShownJson.mark(film);
    }

    private static String file(Path film) {
        return FOLDER + "/" + film.getFileName() + ".mp4";
    }

    /** Nothing is put in the file's place. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Stopped() {
            super("stopped", null, false, false);
        }
    }
}
