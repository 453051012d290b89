package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.episode.Episode;
import org.misecue.footage.Beside;
import org.misecue.narration.Clock;
import org.misecue.narration.Moment;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Moments as another camera saw them; one camera may have written several films. */
public final class OtherCamera {

    private final Worktop worktop;
    private final Cameras cameras;
    private final List<Path> films;
    private final Set<Note> notes = new LinkedHashSet<>();

    /** A moment on the clock of a film. */
    public record Seen(Path film, Duration at) {}

    /**
     * @param name of a film, with or without folder and ending, or how the names of a camera's films begin
     * @throws BadInput if there is none
     */
    public OtherCamera(Worktop worktop, Cameras cameras, String name) {
        this.worktop = worktop;
        this.cameras = cameras;
        this.films = named(worktop.episode(), name);
    }

    private static List<Path> named(Episode episode, String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        List<Path> alike = new ArrayList<>();
        List<Path> begin = new ArrayList<>();
        for (Path film : episode.footage()) {
            String full = episode.name(film).toLowerCase(Locale.ROOT);
            String file = full.substring(full.lastIndexOf('/') + 1);
            if (wanted.equals(full) || wanted.equals(file)) {
                return List.of(film);
            }
            if (wanted.equals(Worktop.stem(file))) {
                alike.add(film);
            }
            if (!wanted.isEmpty() && file.startsWith(wanted)) {
                begin.add(film);
            }
        }
        if (!alike.isEmpty()) {
            return List.copyOf(alike);
        }
        if (begin.isEmpty()) {
            String there = episode.footage().stream().map(episode::name).collect(Collectors.joining(", "));
            throw new BadInput(
                    Place.of("--camera"),
                    "no film in footage/ has the name " + name + " or begins with it; "
                            + (there.isEmpty() ? "put the camera's files there." : "there are " + there + "."));
        }
        return List.copyOf(begin);
    }

    /**
     * Where this camera saw a moment; empty where it did not run or nobody knows, which the notes tell.
     *
     * @throws BadInput if no film runs on the narration's clock, or a film cannot be used
     */
    public Optional<Seen> seen(Moment moment) {
        Path told = worktop.filmOf(moment.source()).orElseThrow(() -> worktop.noFilm(moment.source()));
        List<Note> why = new ArrayList<>();
        for (Path film : films) {
            Beside beside = film.equals(told) ? Beside.SAME : cameras.beside(told, film);
            Optional<Duration> at = beside.offset().map(offset -> offset.inSecond(moment.at()));
            if (at.filter(time -> runs(film, time)).isPresent()) {
                Doubts.of(beside, name(told)).ifPresent(doubt -> notes.add(note(film, doubt)));
                return Optional.of(new Seen(film, at.get()));
            }
            why.add(note(film, at.isPresent() ? notRunning(told, moment.at()) : Doubts.unlaid(beside, name(told))));
        }
        notes.addAll(why);
        return Optional.empty();
    }

    private Note note(Path film, String sentence) {
        return new Note(Place.of(name(film)), sentence);
    }

    private String name(Path film) {
        return worktop.episode().name(film);
    }

    private String notRunning(Path told, Duration at) {
        return "this did not run at %s of %s".formatted(Clock.hms(at), name(told));
    }

    private boolean runs(Path film, Duration at) {
        return !at.isNegative() && at.compareTo(cameras.info(film).length()) < 0;
    }

    /** Why moments were not found until now, each reason once. */
    public List<Note> notes() {
        return List.copyOf(notes);
    }
}
