package org.misecue.worktop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.misecue.episode.Episode;
import org.misecue.footage.Beside;
import org.misecue.footage.ClockOfDay;
import org.misecue.footage.CommonSound;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;
import org.misecue.footage.Levels;
import org.misecue.footage.Lookout;
import org.misecue.footage.Together;
import org.misecue.shown.ShownJson;

/**
 * How an episode's films lie to one another: by time code where the sound does not contradict it, or else by what both
 * heard. Each film is listened to once at most, and what is found is kept.
 */
public final class Cameras {

    private final Episode episode;
    private final Function<Path, Lookout> listening;
    private final KeptOffsets kept;
    private final Map<Path, FilmInfo> films = new HashMap<>();
    private final Map<Path, String> marks = new HashMap<>();
    private final Map<Path, Optional<Levels>> levels = new HashMap<>();

    /** @param listening looks on where a film has to be heard */
    public Cameras(Episode episode, Function<Path, Lookout> listening) {
        this.episode = episode;
        this.listening = listening;
        this.kept = new KeptOffsets(episode.state());
    }

    /** @throws org.misecue.notice.BadInput if the film cannot be read */
    public FilmInfo info(Path film) {
        return films.computeIfAbsent(film, Footage::probe);
    }

    /** Takes what somebody who hears the film anyway finds out; empty where nothing is asked of its sound. */
    public Optional<Consumer<Levels>> wanted(Path film, List<Path> among) {
        boolean asked = among.stream()
                .anyMatch(other -> !other.equals(film)
                        && haveSound(film, other)
                        && kept.read(mark(film), mark(other)).isEmpty());
        return asked ? Optional.of(found -> levels.put(film, Optional.of(found))) : Optional.empty();
    }

    /**
     * Each two of some films.
     *
     * @throws org.misecue.notice.BadInput if one cannot be used
     */
    public Together together(List<Path> among) {
        List<Together.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < among.size(); i++) {
            for (Path second : among.subList(i + 1, among.size())) {
                Path first = among.get(i);
                pairs.add(new Together.Pair(episode.name(first), episode.name(second), beside(first, second)));
            }
        }
        return new Together(List.copyOf(pairs));
    }

    /**
     * How the second film lies to the first.
     *
     * @throws org.misecue.notice.BadInput if one cannot be used
     */
    public Beside beside(Path first, Path second) {
        if (haveSound(first, second)) {
            Optional<Beside> heard = kept.read(mark(first), mark(second)).or(() -> hear(first, second));
            if (heard.isPresent()) {
                return heard.get();
            }
        }
        return Beside.of(ClockOfDay.offset(info(first), info(second)));
    }

    private Optional<Beside> hear(Path first, Path second) {
        Optional<CommonSound.Listened> one = listened(first);
        Optional<CommonSound.Listened> two = one.flatMap(any -> listened(second));
        Optional<Beside> found = one.flatMap(heard -> two.map(other -> CommonSound.beside(heard, other)));
        found.ifPresent(beside -> kept.keep(mark(first), mark(second), beside));
        return found;
    }

    private Optional<CommonSound.Listened> listened(Path film) {
        return levels.computeIfAbsent(film, path -> Levels.of(path, listening.apply(path)))
                .map(heard -> new CommonSound.Listened(film, info(film), heard));
    }

    private boolean haveSound(Path first, Path second) {
        return info(first).sound().isPresent() && info(second).sound().isPresent();
    }

    private String mark(Path film) {
        return marks.computeIfAbsent(film, ShownJson::mark);
    }
}
