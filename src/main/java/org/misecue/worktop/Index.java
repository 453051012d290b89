package org.misecue.worktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.align.Alignment;
import org.misecue.episode.Episode;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Step;
import org.misecue.search.MomentIndex;
import org.misecue.search.Passage;

/** Keeps the episode's index as new as its files. A stamp beside it names the files that it was made of. */
public final class Index {

    private static final String STAMP = "index.stamp";

    private final Worktop worktop;
    private final Episode episode;

    public Index(Worktop worktop) {
        this.worktop = worktop;
        this.episode = worktop.episode();
    }

    /** Whether it was made of the files as they are now, by this version. */
    public boolean isFresh() {
        try {
            Path stamp = episode.state().path(STAMP);
            return MomentIndex.isBuilt(episode.folder())
                    && Files.isRegularFile(stamp)
                    && Files.readString(stamp).equals(stamp());
        } catch (IOException e) {
            return false;
        }
    }

    /** @return how many passages it has */
    public int build() {
        List<Passage> passages = passages();
        episode.state().ready();
        MomentIndex.build(episode.folder(), passages, names(worktop.pantry()));
        episode.state().write(STAMP, stamp());
        return passages.size();
    }

    private List<Passage> passages() {
        Alignment alignment = worktop.alignment();
        List<Passage> passages = new ArrayList<>();
        for (Narration narration : worktop.narrations()) {
            for (Cue cue : narration.cues()) {
                passages.add(Passage.of(narration.source(), cue, alignment.stepAt(narration.source(), cue.start())));
            }
        }
        for (Step step : worktop.recipe().steps()) {
            alignment.spans().stream()
                    .filter(span -> span.step() == step.number())
                    .findFirst()
                    .ifPresent(span -> passages.add(
                            Passage.step(step.number(), step.text(), span.source(), span.start(), span.end())));
        }
        return passages;
    }

    private static List<Set<String>> names(Pantry pantry) {
        return pantry.all().stream().map(Index::names).toList();
    }

    private static Set<String> names(Ingredient ingredient) {
        Set<String> names = new LinkedHashSet<>();
        names.add(ingredient.name());
        names.addAll(ingredient.names());
        return names;
    }

    private String stamp() {
        StringBuilder stamp =
                new StringBuilder("misecue ").append(Version.current()).append('\n');
        Stream.of(
                        Stream.of(
                                episode.recipe(),
                                episode.folder().resolve("episode.yaml"),
                                episode.state().path("corrections.yaml")),
                        worktop.ownPantry().files().stream(),
                        episode.narration().stream())
                .flatMap(files -> files)
                .filter(Files::exists)
                .forEach(file -> stamp.append(line(file)));
        return stamp.toString();
    }

    private String line(Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return episode.name(file) + " " + attributes.size() + " " + attributes.lastModifiedTime() + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
