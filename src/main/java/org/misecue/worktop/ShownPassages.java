package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.misecue.align.Alignment;
import org.misecue.episode.Episode;
import org.misecue.narration.Narration;
import org.misecue.search.Passage;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;

/**
 * What stood in the picture, as far as it was read already: reading a film takes long, and a search does not wait for it.
 */
final class ShownPassages {

    private ShownPassages() {}

    static List<Passage> of(FilmClocks clocks, List<Narration> narrations, Alignment alignment) {
        Episode episode = clocks.episode();
        List<Passage> passages = new ArrayList<>();
        for (Path film : episode.footage()) {
            String name = episode.name(film);
            new KeptReading(episode.state(), film, name)
                    .read().stream()
                            .flatMap(shown -> shown.cards().stream())
                            .map(card -> Passage.shown(
                                    text(card),
                                    step(film, card.from(), clocks, narrations, alignment),
                                    name,
                                    card.from(),
                                    card.to()))
                            .forEach(passages::add);
        }
        return passages;
    }

    private static String text(Card card) {
        return card.lines().stream().map(CardLine::text).collect(Collectors.joining(" / "));
    }

    private static int step(
            Path film, Duration at, FilmClocks clocks, List<Narration> narrations, Alignment alignment) {
        return narrations.stream()
                .map(Narration::source)
                .filter(source -> clocks.filmOf(source).filter(film::equals).isPresent())
                .mapToInt(source -> alignment.stepAt(source, at))
                .filter(step -> step > 0)
                .findFirst()
                .orElse(0);
    }
}
