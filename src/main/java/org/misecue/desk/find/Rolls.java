package org.misecue.desk.find;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.footage.Footage;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
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
                            .toList()));
        }
        silent.values().forEach(film -> rolls.add(new Roll(Optional.of(film), List.of(), List.of())));
        return new Rolls(List.copyOf(rolls), List.copyOf(faults));
    }

    public Optional<Roll> roll(String name) {
        return all.stream().filter(roll -> roll.isCalled(name)).findFirst();
    }
}
