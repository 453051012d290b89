package org.misecue.desk.find;

import java.util.List;

/**
 * How far the indexing of an archive is.
 *
 * @param running whether it goes on
 * @param done of so many that have changed
 * @param changed 0 while nobody knows
 * @param episode which is just being read
 * @param notes what is wrong with episodes, or with the archive
 */
public record Indexing(boolean running, int done, int changed, String episode, List<String> notes) {

    static final Indexing IDLE = ended(List.of());

    static Indexing ended(List<String> notes) {
        return new Indexing(false, 0, 0, "", notes);
    }
}
