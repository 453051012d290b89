package org.misecue.worktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.misecue.episode.Episode;
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
                    && Files.readString(stamp).equals(Stamp.of(episode, worktop.ownPantry()));
        } catch (IOException e) {
            return false;
        }
    }

    /** @return how many passages it has */
    public int build() {
        List<Passage> passages = new ArrayList<>(Findable.passages(
                worktop.recipe(),
                worktop.narrations(),
                worktop.alignment(),
                NamedAmounts.of(worktop.heard()),
                worktop.pantry()));
        passages.addAll(ShotPassages.of(worktop, worktop.alignment()));
        passages.addAll(ShownPassages.of(worktop.clocks(), worktop.narrations(), worktop.alignment()));
        episode.state().ready();
        MomentIndex.build(episode.folder(), passages, Findable.names(worktop.pantry()));
        episode.state().write(STAMP, Stamp.of(episode, worktop.ownPantry()));
        return passages.size();
    }
}
