package org.misecue.desk.media;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.misecue.footage.Browsers;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;

/** What films hold, looked up once for as long as they stay the same. */
final class Shelf {

    private final Map<Path, Seen> seen = new ConcurrentHashMap<>();

    /**
     * @param objection why browsers would not play it as it is
     */
    record Label(FilmInfo info, Optional<String> objection) {}

    private record Seen(Version version, Label label) {}

    /** @throws org.misecue.notice.BadInput if the film cannot be used */
    Label label(Path film) throws IOException {
        Version now = Version.of(film);
        Seen before = seen.get(film);
        if (before == null || !before.version.equals(now)) {
            before = new Seen(now, new Label(Footage.probe(film), Browsers.objection(film)));
            seen.put(film, before);
        }
        return before.label;
    }
}
