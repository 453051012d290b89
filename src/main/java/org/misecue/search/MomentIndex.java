package org.misecue.search;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexNotFoundException;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.store.NIOFSDirectory;
import org.misecue.notice.BadInput;

/**
 * Finds the moment at which something is said in one episode; {@link ArchiveIndex} does so in many.
 *
 * <p>A query is words, {@code "words in this order"}, amounts, which are found by their value, and what narrows it
 * down: {@code step:3}, {@code speaker:Mo}, {@code from:12:30}, {@code to:14:00}, {@code ingredient:butter},
 * {@code allergen:sesame}. Words are found in all their forms, by their other names and by words that sound alike; everything that is asked for should
 * be said close together. Where that is said nowhere, a last word that nobody said may be the beginning of others; else
 * any of it will do, and misspelt words are taken for the nearest that were said.
 */
public final class MomentIndex {

    /** Another number where passages are kept otherwise than before, so that an older index is made anew. */
    public static final int FORMAT = 7;

    private MomentIndex() {}

    /**
     * Makes the episode's index anew in {@code .misecue/index}. Until it is complete, a search finds what was there before,
     * also when this ends half way.
     *
     * @param otherNames groups of names for the same thing
     * @throws BadInput where the folder can't be written to
     */
    public static void build(Path episode, List<Passage> passages, List<Set<String>> otherNames) {
        IndexBuilder.build(IndexPlace.in(episode), passages, otherNames);
    }

    /** Whether the episode has an index. */
    public static boolean isBuilt(Path episode) {
        return Files.isDirectory(IndexPlace.in(episode).folder());
    }

    /**
     * @param limit how many hits at most, from 1
     * @throws BadInput where the episode has no readable index, or the query no word
     */
    public static FindResult find(Path episode, String query, int limit) {
        Ask ask = Ask.telling(query);
        IndexPlace place = IndexPlace.in(episode);
        // Plain file reads open faster than memory maps, and an episode's index is small.
        try (NIOFSDirectory directory = new NIOFSDirectory(place.folder());
                IndexReader reader = DirectoryReader.open(directory)) {
            IndexSearcher searcher = new IndexSearcher(reader);
            searcher.setQueryCache(null); // it is asked once
            return new MomentSearch(searcher, new Vocabulary().read(reader), new Scope.OneEpisode(episode))
                    .find(query, ask, Math.max(1, limit));
        } catch (IndexNotFoundException e) {
            throw place.missing(e);
        } catch (IOException e) {
            throw place.unreadable(e);
        }
    }
}
