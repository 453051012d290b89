package org.misecue.desk.find;

import java.util.Collections;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.concurrent.CompletableFuture;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.search.FindResult;
import org.misecue.search.MomentIndex;
import org.misecue.worktop.Index;
import org.misecue.worktop.Worktop;

/** Finds in an episode, and keeps its index as new as its files. */
final class Finder {

    /** What was worked out for a page, until a file changes and there is another worktop. */
    private final Map<Worktop, Rolls> known = Collections.synchronizedMap(new WeakHashMap<>());

    private final Map<Worktop, Projection> projections = Collections.synchronizedMap(new WeakHashMap<>());

    FindResult find(OpenEpisode episode, String words, int most) {
        refresh(episode);
        return MomentIndex.find(episode.folder(), words, most);
    }

    Rolls rolls(OpenEpisode episode) {
        return known.computeIfAbsent(episode.worktop(), Rolls::of);
    }

    /** What other cameras saw while a film ran. */
    Projection projection(OpenEpisode episode) {
        return projections.computeIfAbsent(
                episode.worktop(),
                worktop -> new Projection(
                        worktop,
                        rolls(episode).all().stream()
                                .flatMap(roll -> roll.film().stream())
                                .toList()));
    }

    /** Makes the index while somebody still looks at the page, so that the first word is found at once. */
    void warmUp(OpenEpisode episode) {
        CompletableFuture.runAsync(() -> refresh(episode)).exceptionally(e -> null);
    }

    private static void refresh(OpenEpisode episode) {
        Index index = new Index(episode.worktop());
        if (index.isFresh()) {
            return;
        }
        synchronized (episode) {
            if (!index.isFresh()) {
                index.build();
            }
        }
    }
}
