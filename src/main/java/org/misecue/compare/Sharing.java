package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Words;

/** One amount for several ingredients: "225 each of butter, sugar and flour", "butter and sugar, 100 grams of each". */
final class Sharing {

    private static final Set<String> LINKS = Words.set("and of the your my both is um some plus");
    private static final int LONGEST_LINK = 3;

    private Sharing() {}

    /** The names that share the amount; empty where it is not shared. */
    static List<NameHit> names(SpokenQuantity said, Hearing heard) {
        String after = heard.words.text(said.end());
        boolean each = after.equals("each")
                || (after.equals("of") && heard.words.text(said.end() + 1).equals("each"))
                || (after.equals("of") && heard.words.text(said.end() + 1).equals("both"));
        if (!each) {
            return List.of();
        }
        List<NameHit> ahead = ahead(said.end() + (after.equals("of") ? 2 : 1), heard);
        return ahead.size() > 1 ? ahead : behind(said.start(), heard);
    }

    private static List<NameHit> ahead(int from, Hearing heard) {
        List<NameHit> list = new ArrayList<>();
        int at = from;
        for (NameHit name : heard.names) {
            if (name.start() >= at && name.inRecipe()) {
                if (!linked(at, name.start(), heard)) {
                    break;
                }
                list.add(name);
                at = name.end();
            }
        }
        return list;
    }

    private static List<NameHit> behind(int until, Hearing heard) {
        List<NameHit> list = new ArrayList<>();
        int at = until;
        for (int i = heard.names.size() - 1; i >= 0; i--) {
            NameHit name = heard.names.get(i);
            if (name.end() > at || !name.inRecipe()) {
                continue;
            }
            boolean near = list.isEmpty() ? at - name.end() <= 8 : linked(name.end(), at, heard);
            if (!near) {
                break;
            }
            list.add(0, name);
            at = name.start();
        }
        return list;
    }

    private static boolean linked(int from, int to, Hearing heard) {
        if (to - from > LONGEST_LINK) {
            return false;
        }
        for (int at = from; at < to; at++) {
            if (!LINKS.contains(heard.words.text(at))) {
                return false;
            }
        }
        return true;
    }
}
