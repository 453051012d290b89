package org.misecue.worktop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.episode.Correction;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;

/**
 * What is said in an episode: its narration files, and the subtitles inside films without one, each on its film's clock.
 *
 * @param all of one film behind each other in the order of its time
 * @param unusable notes on subtitles inside films that cannot be read
 */
record SaidInFilms(FilmClocks clocks, List<Narration> all, List<Note> unusable) {

    /** @throws BadInput if a narration file cannot be read */
    static SaidInFilms read(FilmClocks clocks, List<Correction> corrections, Locale language) {
        Heard heard = new Heard(clocks, corrections);
        SaidInside inside = SaidInside.of(clocks, language);
        Stream<Narration> files = clocks.episode().narration().stream().map(heard::narration);
        Stream<Narration> films = inside.narrations().stream().map(heard::ofFilm);
        return new SaidInFilms(clocks, heard.joined(Stream.concat(files, films).toList()), inside.notes());
    }

    List<Note> notes() {
        Stream<Note> twins = all.stream().flatMap(one -> clocks.twins(one.source()).stream());
        Stream<Note> own = all.stream().flatMap(one -> one.notes().stream());
        return Stream.concat(Stream.concat(twins, own), unusable.stream()).toList();
    }

    List<Narration> of(Path film) {
        return all.stream()
                .filter(one -> clocks.filmOf(one.source()).filter(film::equals).isPresent())
                .toList();
    }

    List<List<Narration>> byClock() {
        Map<String, List<Narration>> byClock = new LinkedHashMap<>();
        all.forEach(one -> byClock.computeIfAbsent(clocks.clockOf(one.source()), any -> new ArrayList<>())
                .add(one));
        return List.copyOf(byClock.values());
    }

    /**
     * @param named a narration or a film; where neither is named, the only clock there is
     * @return the narrations on its clock, by their names; none where it is not sure which it is
     */
    List<String> onClockOf(Optional<String> named) {
        List<List<Narration>> byClock = byClock();
        List<String> found = byClock.stream()
                .filter(one -> named.map(name -> one.stream().anyMatch(said -> isOnClockOf(name, said)))
                        .orElse(byClock.size() == 1))
                .flatMap(List::stream)
                .map(Narration::source)
                .toList();
        return found.isEmpty() ? named.stream().toList() : found;
    }

    private boolean isOnClockOf(String name, Narration said) {
        return said.source().equals(name)
                || clocks.filmOf(name).isPresent() && clocks.filmOf(name).equals(clocks.filmOf(said.source()));
    }
}
