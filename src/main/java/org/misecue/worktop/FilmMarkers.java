package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.misecue.edit.MarkedFilm;
import org.misecue.edit.Marker;
import org.misecue.edit.Markers;
import org.misecue.footage.Beside;
import org.misecue.footage.FilmInfo;
import org.misecue.narration.Narration;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.publish.Chapter;
import org.misecue.publish.Chapters;

/**
 * The films of an episode with their markers. A film in which nobody's words were written down gets those of the films that
 * ran beside it, as far as it covers them and on its own clock.
 */
public final class FilmMarkers {

    private final Worktop worktop;
    private final Cameras cameras;
    private final Map<Path, FilmInfo> films;
    private final Map<Path, List<Marker>> told = new LinkedHashMap<>();
    private final List<Note> notes = new ArrayList<>();

    public FilmMarkers(Worktop worktop, Cameras cameras, Map<Path, FilmInfo> films) {
        this.worktop = worktop;
        this.cameras = cameras;
        this.films = films;
        for (Path film : films.keySet()) {
            List<Marker> own = own(film);
            if (!own.isEmpty()) {
                told.put(film, own);
            }
        }
    }

    /** @throws org.misecue.notice.BadInput if a film cannot be used */
    public List<MarkedFilm> all() {
        return films.entrySet().stream()
                .map(film -> MarkedFilm.of(
                        worktop.title(), name(film.getKey()), film.getValue(), markers(film.getKey(), film.getValue())))
                .toList();
    }

    /** What was doubtful about how films lie beside each other. */
    public List<Note> notes() {
        return List.copyOf(notes);
    }

    private List<Marker> markers(Path film, FilmInfo info) {
        if (told.containsKey(film) || !worktop.narrationsOf(film).isEmpty()) {
            return told.getOrDefault(film, List.of());
        }
        return told.keySet().stream().flatMap(other -> from(other, film, info)).toList();
    }

    private Stream<Marker> from(Path other, Path film, FilmInfo info) {
        Beside beside = cameras.beside(other, film);
        if (beside.offset().isEmpty()) {
            if (beside.denied().isPresent()) {
                notes.add(new Note(Place.of(name(film)), Doubts.unlaid(beside, name(other))));
            }
            return Stream.empty();
        }
        Doubts.of(beside, name(other)).ifPresent(doubt -> notes.add(new Note(Place.of(name(film)), doubt)));
        return told.getOrDefault(other, List.of()).stream()
                .flatMap(marker -> Optional.of(beside.offset().get().inSecond(marker.at()))
                        .filter(at -> !at.isNegative() && at.compareTo(info.length()) < 0)
                        .map(at -> moved(marker, at, other))
                        .stream());
    }

    private Marker moved(Marker marker, Duration at, Path from) {
        String heard = "(told in " + name(from) + ")";
        return new Marker(
                at, marker.kind(), marker.name(), marker.comment().isEmpty() ? heard : marker.comment() + " " + heard);
    }

    private List<Marker> own(Path film) {
        String name = name(film);
        Predicate<String> isHere = source -> source.equals(name)
                || worktop.filmOf(source).filter(film::equals).isPresent();
        List<Chapter> steps = Chapters.steps(
                worktop.recipe(),
                worktop.alignment(),
                worktop.narrationsOf(film).stream().map(Narration::source).toList());
        return Markers.of(worktop.docket(), steps, isHere);
    }

    private String name(Path film) {
        return worktop.episode().name(film);
    }
}
