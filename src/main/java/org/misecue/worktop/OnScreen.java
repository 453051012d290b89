package org.misecue.worktop;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.misecue.compare.Picture;
import org.misecue.narration.Clock;
import org.misecue.narration.Narration;
import org.misecue.notice.Note;
import org.misecue.shown.Card;
import org.misecue.shown.Cards;
import org.misecue.shown.LanguageData;
import org.misecue.shown.ShownText;

/** What an episode's films show in writing: read once, and kept as long as the film is the same. */
public final class OnScreen {

    private final Worktop worktop;
    private final Optional<LanguageData> data;
    private final Consumer<String> progress;

    public OnScreen(Worktop worktop, Optional<LanguageData> data, Consumer<String> progress) {
        this.worktop = worktop;
        this.data = data;
        this.progress = progress;
    }

    /**
     * The cards of all films.
     *
     * @param notes takes what could not be read
     */
    public Picture picture(Consumer<List<Note>> notes) {
        List<Card> cards = new ArrayList<>();
        Map<String, List<String>> clocks = new LinkedHashMap<>();
        for (Path film : worktop.episode().footage()) {
            String name = worktop.episode().name(film);
            List<String> said =
                    worktop.narrationsOf(film).stream().map(Narration::source).toList();
            if (!said.isEmpty()) {
                clocks.put(name, said);
            }
            Optional<ShownText> text = read(film, name);
            notes.accept(text.map(ShownText::notes).orElseGet(() -> List.of(LanguageData.missing(name))));
            text.ifPresent(shown -> cards.addAll(shown.cards()));
        }
        return new Picture(List.copyOf(cards), clocks);
    }

    /** Empty where it was not read before and cannot be read now. */
    private Optional<ShownText> read(Path film, String name) {
        KeptReading kept = new KeptReading(worktop.episode().state(), film, name);
        return kept.read()
                .or(() -> data.map(language -> {
                    ShownText text = Cards.read(film, name, language, now(name));
                    if (text.notes().isEmpty()) {
                        kept.keep(text);
                    }
                    return text;
                }));
    }

    /** Once in a minute of film. */
    private Consumer<Duration> now(String name) {
        long[] told = {-1};
        return at -> {
            if (at.toMinutes() > told[0]) {
                told[0] = at.toMinutes();
                progress.accept("Reading what " + name + " shows, at " + Clock.hms(at));
            }
        };
    }
}
