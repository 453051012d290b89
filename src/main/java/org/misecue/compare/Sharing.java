package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.misecue.quantity.Unit;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import org.misecue.spoken.Words;

/** One amount for several ingredients: "225 each of butter, sugar and flour", "butter and sugar, 100 grams of each". */
final class Sharing {

    private static final Set<String> LINKS = Words.set("and of the your my both is um some plus half then");
    private static final Set<String> ARTICLES = Set.of("a", "an", "one");
    private static final int REACH = 40;
    private static final int NEAR = 8;
    /** "the butter and the sugar all weigh the same and for this tin it's a hundred of each". */
    private static final int LISTED = 20;

    private static final int LONGEST_LINK = 3;

    private Sharing() {}

    /** The names that share the amount; empty where it is not shared. */
    static List<NameHit> names(SpokenQuantity said, Hearing heard) {
        String after = heard.words.text(said.end());
        boolean each = after.equals("each")
                || after.equals("apiece")
                || (after.equals("of") && heard.words.text(said.end() + 1).equals("each"))
                || (after.equals("of") && heard.words.text(said.end() + 1).equals("both"));
        if (!each || !heard.on(Mechanism.SHARED_AMOUNTS)) {
            return List.of();
        }
        List<NameHit> ahead = ahead(said.end() + (after.equals("of") ? 2 : 1), heard);
        return ahead.size() > 1 ? ahead : behind(said.start(), heard);
    }

    /** "half a lemon", "a quarter of an onion": a part of one thing that is counted is its amount. */
    static boolean isPieceOfOne(SpokenQuantity said, Hearing heard) {
        int at = heard.words.text(said.end()).equals("of") ? said.end() + 1 : said.end();
        return ARTICLES.contains(heard.words.text(at)) && (isCounted(at + 1, heard) || isPieceWord(at + 1, heard));
    }

    /** "four tablespoons in the dish, only half of that goes on". */
    static boolean isOnlyPart(SpokenQuantity share, Hearing heard) {
        return share.manner() == Manner.SHARE
                && heard.words.text(share.start() - 1).equals("only");
    }

    private static boolean isCounted(int from, Hearing heard) {
        return heard.namesIn(from, from + 3).stream()
                .flatMap(name -> name.lines().stream())
                .flatMap(line -> heard.lines.get(line).quantity().stream())
                .anyMatch(written -> written.unit() == Unit.EACH);
    }

    /** "half a pod", where vanilla is named before. */
    private static boolean isPieceWord(int at, Hearing heard) {
        String piece = Words.singular(heard.words.text(at));
        return heard.lines.stream()
                .filter(line -> line.quantity()
                        .filter(written -> written.unit() == Unit.EACH)
                        .isPresent())
                .anyMatch(line -> Words.content(line.ingredient()).contains(piece));
    }

    private static List<NameHit> ahead(int from, Hearing heard) {
        List<NameHit> list = new ArrayList<>();
        int at = from;
        for (NameHit name : heard.namesIn(from, from + REACH)) {
            if (name.inRecipe()) {
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
        List<NameHit> before = heard.namesIn(until - REACH, until);
        for (int i = before.size() - 1; i >= 0; i--) {
            NameHit name = before.get(i);
            if (name.end() > at || !name.inRecipe()) {
                continue;
            }
            boolean near = list.isEmpty() ? at - name.end() <= LISTED : linked(name.end(), at, heard);
            if (!near) {
                break;
            }
            list.add(0, name);
            at = name.start();
        }
        boolean alone = list.size() == 1 && until - list.get(0).end() > NEAR;
        return alone ? List.of() : list;
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
