package org.misecue.desk.find;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.desk.counter.Simmering;
import org.misecue.worktop.Cameras;
import org.misecue.worktop.Worktop;

/** What other cameras saw, for each film that is looked at: films are listened to meanwhile, one after the other. */
final class Projection {

    private static final Duration PATIENCE = Duration.ofMillis(300);

    private final Worktop worktop;
    private final List<Film> films;
    private final Cameras cameras;
    private final Map<String, Simmering<Views>> views = new HashMap<>();

    Projection(Worktop worktop, List<Film> films) {
        this.worktop = worktop;
        this.films = films;
        this.cameras = new Cameras(
                worktop.episode(), film -> at -> !Thread.currentThread().isInterrupted());
    }

    /**
     * Empty while that lasts longer than a page can wait.
     *
     * @throws org.misecue.notice.BadInput if a film cannot be used
     */
    Optional<Views> beside(Film shown) {
        Simmering<Views> pot;
        synchronized (views) {
            pot = views.computeIfAbsent(shown.name(), any -> new Simmering<>(() -> find(shown)));
        }
        return pot.within(PATIENCE);
    }

    private Views find(Film shown) {
        List<Film> others =
                films.stream().filter(film -> !film.name().equals(shown.name())).toList();
        synchronized (cameras) {
            return Views.beside(shown, others, worktop, cameras);
        }
    }
}
