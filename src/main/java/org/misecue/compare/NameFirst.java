package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;

/**
 * "… a hundred grams, honey eighty grams, cocoa forty grams": where a run of names and amounts ends with an amount, each
 * name has its own behind it; where it ends with a name, before it.
 */
final class NameFirst {

    private static final int NAME_REACH = 3;

    private final Hearing heard;

    /** What each run came to, by where its names end: asked of every name in it, so a long run is walked once. */
    private final Map<Integer, Boolean> known = new HashMap<>();

    NameFirst(Hearing heard) {
        this.heard = heard;
    }

    /** Whether the name has its own amount behind it, which goes to no other name. */
    boolean isOne(NameHit first) {
        List<Integer> run = new ArrayList<>();
        boolean nameFirst = true;
        Optional<NameHit> name = Optional.of(first);
        while (name.isPresent()) {
            int end = name.get().end();
            Optional<SpokenQuantity> own = ownBehind(end);
            if (known.containsKey(end) || own.isEmpty()) {
                nameFirst = known.getOrDefault(end, false);
                break;
            }
            run.add(end);
            name = nameBehind(own.get().end());
        }
        for (int end : run) {
            known.put(end, nameFirst);
        }
        return nameFirst;
    }

    private Optional<SpokenQuantity> ownBehind(int end) {
        return heard.quantityFrom(end)
                .filter(own -> own.start() == end && own.manner() == Manner.MEASURED && !own.isAside());
    }

    private Optional<NameHit> nameBehind(int end) {
        int from = heard.words.text(end).equals("of") ? end + 1 : end;
        return heard.namesIn(from, from + NAME_REACH).stream().findFirst();
    }
}
