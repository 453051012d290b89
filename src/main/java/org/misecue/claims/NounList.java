package org.misecue.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.WordStream;

/** Nouns that are denied together: "dairy, gluten and eggs". */
final class NounList {

    private static final Set<String> JOINTS = Set.of("and", "or", "nor", "any");

    private NounList() {}

    /** The nouns that begin at the index and go on; empty where none begins there. */
    static List<Denials.Term> from(WordStream words, int start) {
        List<Denials.Term> nouns = new ArrayList<>();
        int at = start;
        while (at < words.size() && (nouns.isEmpty() || !words.wall(at))) {
            int noun = nouns.isEmpty() ? at : behindJoints(words, at);
            Optional<Denials.Term> next = Denials.noun(words, noun);
            if (next.isEmpty()) {
                break;
            }
            nouns.add(next.get());
            at = next.get().end();
        }
        return List.copyOf(nouns);
    }

    private static int behindJoints(WordStream words, int from) {
        int at = from;
        while (at < from + 2 && JOINTS.contains(words.text(at)) && !words.wall(at)) {
            at++;
        }
        return at;
    }
}
