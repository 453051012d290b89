package org.misecue.desk.find;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.footage.Footage;
import org.misecue.narration.Clock;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.worktop.Worktop;

/**
 * The rolls of an episode: first those in which somebody speaks, then the other films.
 *
 * @param faults of films that cannot be read, a sentence each
 */
public record Rolls(List<Roll> all, List<String> faults) {

    static Rolls of(Worktop worktop) {
        Map<Path, Film> films = new LinkedHashMap<>();
        List<String> faults = new ArrayList<>();
        for (Path path : worktop.episode().footage()) {
            try {
                films.put(path, new Film(worktop.episode().name(path), Footage.probe(path)));
            } catch (BadInput e) {
                faults.add(String.valueOf(e.getMessage()));
            }
        }
        List<Roll> rolls = new ArrayList<>();
        Map<Path, Film> silent = new LinkedHashMap<>(films);
        for (List<Narration> said : worktop.narrationsByClock()) {
            List<String> sources = said.stream().map(Narration::source).toList();
            Optional<Path> path = worktop.filmOf(sources.get(0));
            path.ifPresent(silent::remove);
            rolls.add(new Roll(
                    path.flatMap(one -> Optional.ofNullable(films.get(one))),
                    said,
                    worktop.alignment().spans().stream()
                            .filter(span -> span.step() > 0 && sources.contains(span.source()))
                            .toList(),
                    notes(worktop, sources)));
        }
        silent.values()
                .forEach(film -> rolls.add(
                        new Roll(Optional.of(film), List.of(), List.of(), notes(worktop, List.of(film.name())))));
        return new Rolls(List.copyOf(rolls), List.copyOf(faults));
    }

    /** What an editor should know of some narrations, or of the subtitles inside a film. */
    private static List<String> notes(Worktop worktop, List<String> sources) {
        Stream<String> offsets = sources.stream()
                .filter(source -> !worktop.offsetOf(source).isZero())
                .map(source -> "%s: episode.yaml puts it %s %s"
                        .formatted(
                                source,
                                Clock.hms(worktop.offsetOf(source).abs()),
                                worktop.offsetOf(source).isNegative() ? "earlier" : "later"));
        Stream<String> notes = worktop.narrationNotes().stream()
                .filter(note -> sources.contains(note.place().file()))
                .map(Note::toString);
        return Stream.concat(offsets, notes).map(Rolls::ended).toList();
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }

    /** By the name of a narration or of a film. */
    public Optional<Roll> roll(String name) {
        return all.stream().filter(roll -> roll.isCalled(name)).findFirst();
    }

    /** How many films there are. */
    public long films() {
        return all.stream().filter(roll -> roll.film().isPresent()).count();
    }
}
