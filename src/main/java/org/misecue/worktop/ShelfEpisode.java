package org.misecue.worktop;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.misecue.align.Aligner;
import org.misecue.align.Alignment;
import org.misecue.compare.Comparer;
import org.misecue.compare.Picture;
import org.misecue.episode.Correction;
import org.misecue.episode.Corrections;
import org.misecue.episode.Episode;
import org.misecue.episode.EpisodeSettings;
import org.misecue.episode.Offset;
import org.misecue.narration.Narration;
import org.misecue.notice.BadInput;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.search.Passage;
import org.misecue.search.Shelved;

/**
 * An episode among many: what is wrong with it is noted, and what is right with it can still be found.
 *
 * @param name within the archive
 * @param stamp of its files, or what is wrong with the folder itself
 * @param usual the pantry that holds for every episode
 */
record ShelfEpisode(String name, String stamp, Optional<Episode> episode, OwnPantry own, UsualPantry usual) {

    /**
     * What was read of it.
     *
     * @param names empty where they are the usual ones
     */
    record Reading(List<Passage> passages, List<Set<String>> names, List<String> notes) {}

    /** The pantry of episodes that have no rows of their own. */
    record UsualPantry(OwnPantry own, Pantry pantry) {
        static UsualPantry at(Optional<Path> home) {
            OwnPantry own = OwnPantry.atHome(home);
            return new UsualPantry(own, own.read());
        }

        Pantry with(OwnPantry rows) {
            return rows.files().equals(own.files()) ? pantry : rows.read();
        }
    }

    static ShelfEpisode at(Path folder, String name, Optional<Path> home, UsualPantry usual) {
        OwnPantry own = new OwnPantry(home, folder);
        try {
            Episode episode = Episode.locate(folder);
            return new ShelfEpisode(name, Stamp.of(episode, own), Optional.of(episode), own, usual);
        } catch (BadInput | UncheckedIOException e) {
            return new ShelfEpisode(name, String.valueOf(e.getMessage()), Optional.empty(), own, usual);
        }
    }

    /** Whether it was indexed as it is now. */
    boolean isAsIn(Map<String, Shelved> index) {
        Shelved shelved = index.get(name);
        return shelved != null && shelved.stamp().equals(stamp);
    }

    Reading read() {
        return episode.map(this::read).orElseGet(() -> new Reading(List.of(), List.of(), List.of(stamp)));
    }

    private Reading read(Episode found) {
        List<String> notes = new ArrayList<>();
        Pantry pantry = trying(() -> usual.with(own), notes).orElse(usual.pantry());
        List<Correction> corrections =
                trying(() -> new Corrections(found).read(), notes).orElse(List.of());
        List<Offset> offsets = trying(() -> found.settings().offsets(), notes).orElse(List.of());
        Heard heard = new Heard(new FilmClocks(found, offsets), corrections);
        Locale language =
                trying(() -> found.settings().language(), new ArrayList<>()).orElse(EpisodeSettings.DEFAULT.language());
        Stream<Narration> inside = trying(() -> SaidInside.of(heard.clocks(), language), notes).stream()
                .flatMap(said -> said.narrations().stream())
                .map(heard::ofFilm);
        List<Narration> narrations = heard.joined(Stream.concat(
                        found.narration().stream().flatMap(file -> trying(() -> heard.narration(file), notes).stream()),
                        inside)
                .toList());
        List<Passage> passages = trying(() -> withSteps(heard.clocks(), narrations, pantry), notes)
                .orElseGet(() -> Findable.passages(narrations));
        List<Set<String>> names = pantry == usual.pantry() ? List.of() : Findable.names(pantry);
        return new Reading(passages, names, List.copyOf(notes));
    }

    private List<Passage> withSteps(FilmClocks clocks, List<Narration> narrations, Pantry pantry) {
        Episode episode = clocks.episode();
        Worktop worktop = new Worktop(episode, own, () -> pantry, one -> Picture.NONE);
        Recipe recipe = worktop.recipe();
        Alignment alignment = Aligner.align(recipe, narrations, pantry);
        List<Passage> passages = new ArrayList<>(Findable.passages(
                recipe, narrations, alignment, NamedAmounts.of(Comparer.compare(recipe, narrations, pantry)), pantry));
        passages.addAll(ShotPassages.of(worktop, alignment));
        passages.addAll(ShownPassages.of(clocks, narrations, alignment));
        return passages;
    }

    /** Whatever fails here may fail for this episode only: the others go on. */
    private <T> Optional<T> trying(Supplier<T> part, List<String> notes) {
        try {
            return Optional.of(part.get());
        } catch (BadInput e) {
            notes.add(name + "/" + e.getMessage());
        } catch (RuntimeException e) {
            notes.add(
                    name + ": a fault of misecue kept it from being read wholly; “misecue compare” on it tells more.");
        }
        return Optional.empty();
    }
}
