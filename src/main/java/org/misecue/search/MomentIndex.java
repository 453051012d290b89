package org.misecue.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * Finds the moment at which something is said, in one episode or many.
 *
 * <p>A query is words, {@code "words in this order"} and {@code step:3}. Words are found in all their forms, by their
 * other names and by words that sound alike; everything that is asked for should be said close together. Where that is
 * said nowhere, any of it will do, and misspelt words are taken for the nearest that were said.
 */
public final class MomentIndex {

    private MomentIndex() {}

    /**
     * Makes the episode's index anew in {@code .misecue/index}. Until it is complete, a search finds what was there before,
     * also when this ends half way.
     *
     * @param otherNames groups of names for the same thing
     * @throws BadInput where the folder can't be written to
     */
    public static void build(Path episode, List<Passage> passages, List<Set<String>> otherNames) {
        IndexBuilder.build(place(episode), episode.toString(), passages, otherNames);
    }

    /** Whether the episode has an index. */
    public static boolean isBuilt(Path episode) {
        return Files.isDirectory(place(episode));
    }

    /** As {@link #find(List, String, int)}, in one episode. */
    public static FindResult find(Path episode, String query, int limit) {
        return find(List.of(episode), query, limit);
    }

    /**
     * @param limit how many hits at most, from 1
     * @throws BadInput where an episode has no readable index, or the query no word
     */
    public static FindResult find(List<Path> episodes, String query, int limit) {
        Ask ask = Ask.of(query);
        if (ask.isEmpty()) {
            throw new BadInput(Place.of("find"), "expected a word to look for, such as: find butter");
        }
        try (OpenIndexes open = OpenIndexes.of(episodes)) {
            return new MomentSearch(open).find(query, ask, Math.max(1, limit));
        } catch (IOException e) {
            throw new BadInput(
                    Place.of(episodes.get(0).toString()), "its index cannot be read; make it anew with: index", e);
        }
    }

    static Path place(Path episode) {
        return episode.resolve(".misecue").resolve("index");
    }
}
