package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.episode.Episode;
import org.misecue.episode.Offset;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/**
 * On which film's clock each narration runs, and how far that is from the file's own. A narration belongs to the film that its
 * offset names, else to the film of its name, else to the only film there is: that is sure where it is the only narration,
 * or where offsets are given at all.
 */
record FilmClocks(Episode episode, List<Offset> offsets) {

    /** What is added to the narration's own times. */
    Duration offsetOf(String source) {
        return offset(source).map(Offset::begins).orElse(Duration.ZERO);
    }

    /** @param source a narration, or a film itself */
    Optional<Path> filmOf(String source) {
        return offset(source)
                .flatMap(Offset::film)
                .flatMap(this::named)
                .or(() -> films().filter(film -> episode.name(film).equals(source))
                        .findFirst())
                .or(() -> films().filter(
                                film -> Worktop.stem(episode.name(film)).equals(Worktop.stem(source)))
                        .findFirst())
                .or(() -> films().filter(film -> isOnlyFilm() && isSure()).findFirst());
    }

    /** What to say of a narration that has the name of several films, where no offset names the right one. */
    Optional<Note> twins(String source) {
        List<String> alike = films().map(episode::name)
                .filter(film -> Worktop.stem(film).equals(Worktop.stem(source)))
                .toList();
        boolean named =
                offset(source).flatMap(Offset::film).flatMap(this::named).isPresent();
        return named || alike.size() < 2 || alike.contains(source)
                ? Optional.empty()
                : Optional.of(new Note(
                        Place.of(source),
                        "%s have its name, and it is taken for that of %s; name the right one as film in episode.yaml under narration: offsets"
                                .formatted(String.join(" and ", alike), alike.get(0))));
    }

    /** The clock that a narration shares with others: its film's, or without any film that of all; else only its own. */
    String clockOf(String source) {
        return filmOf(source)
                .map(episode::name)
                .orElse(episode.footage().isEmpty() && !offsets.isEmpty() ? "" : source);
    }

    private boolean isOnlyFilm() {
        return episode.footage().size() == 1;
    }

    private boolean isSure() {
        return episode.narration().size() == 1 || !offsets.isEmpty();
    }

    private Stream<Path> films() {
        return episode.footage().stream();
    }

    private Optional<Path> named(String fileName) {
        return films().filter(film -> fileName.equals(String.valueOf(film.getFileName())))
                .findFirst();
    }

    private Optional<Offset> offset(String source) {
        return offsets.stream()
                .filter(one -> source.equals("narration/" + one.narration()))
                .findFirst();
    }
}
