package org.misecue.claims;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.misecue.spoken.WordStream;

/** Claims that are made in one breath, "vegan and gluten free": what stands around one stands around all. */
final class Joined {

    private static final Set<String> JOINTS = Set.of("and", "or", "nor", "plus", "as", "well", "also", "·", "•");
    private static final int LONGEST_JOINT = 2;

    private Joined() {}

    static List<List<Phrase>> phrases(List<Phrase> phrases, WordStream words) {
        List<List<Phrase>> all = new ArrayList<>();
        for (Phrase phrase : phrases) {
            if (!all.isEmpty() && belongs(phrase, all.get(all.size() - 1), words)) {
                all.get(all.size() - 1).add(phrase);
            } else {
                all.add(new ArrayList<>(List.of(phrase)));
            }
        }
        return all;
    }

    private static boolean belongs(Phrase phrase, List<Phrase> before, WordStream words) {
        Phrase last = before.get(before.size() - 1);
        if (last.form() != phrase.form()) {
            return false;
        }
        if (last.start() == phrase.start()) {
            return true;
        }
        if (phrase.start() - last.end() > LONGEST_JOINT || phrase.form() != Phrase.Form.QUALITY) {
            return false;
        }
        for (int at = last.end(); at <= phrase.start(); at++) {
            boolean joint = at == phrase.start() || JOINTS.contains(words.text(at));
            if (!joint || words.wall(at)) {
                return false;
            }
        }
        return true;
    }
}
