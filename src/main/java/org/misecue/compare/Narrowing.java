package org.misecue.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/**
 * "eggs, and these are whole eggs": a name that could mean several lines means the one that is named more exactly right
 * beside it.
 */
final class Narrowing {

    private static final int REACH_ON = 12;
    private static final int REACH_BACK = 14;
    private static final int NAMES_BACK = 3;

    private static final Set<String> CONTRASTS = Set.of("not", "like", "than", "instead", "or", "then", "and", "no");

    private static final int PART_REACH = 5;
    private static final Set<String> PARTS = Words.set("zest juice rind peel yolk yolks white whites");

    private Narrowing() {}

    static List<NameHit> of(List<NameHit> names, WordStream words, Phrases phrases, List<IngredientLine> all) {
        if (!words.on(Mechanism.NARROWING)) {
            return names;
        }
        List<NameHit> narrowed = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            NameHit name = names.get(i);
            Set<Integer> lines = ofPart(name, words, all);
            if (lines.size() > 1) {
                for (int back = i - 1; back >= Math.max(0, i - NAMES_BACK) && lines.equals(name.lines()); back--) {
                    lines = narrower(name, narrowed.get(back), REACH_BACK);
                }
                NameHit next = i + 1 < names.size() ? names.get(i + 1) : name;
                boolean summed = phrases.within(Kind.TOTAL_AFTER, name.end(), next.start());
                if (lines.equals(name.lines()) && !summed && !isContrasted(next, words)) {
                    lines = narrower(name, next, REACH_ON);
                }
            }
            narrowed.add(name.meaning(lines));
        }
        return List.copyOf(narrowed);
    }

    /** "the zest of one lemon" is of the line that says zest, not of the juice. */
    private static Set<Integer> ofPart(NameHit name, WordStream words, List<IngredientLine> all) {
        for (int at = name.start() - PART_REACH; at < name.start() - 1; at++) {
            String part = words.text(at);
            if (PARTS.contains(part) && words.text(at + 1).equals("of")) {
                Set<Integer> own = name.lines().stream()
                        .filter(line -> Words.content(all.get(line).text()).contains(part))
                        .collect(Collectors.toSet());
                return own.size() == 1 ? own : name.lines();
            }
        }
        return name.lines();
    }

    /** "the plain, not the bread flour". */
    private static boolean isContrasted(NameHit name, WordStream words) {
        return CONTRASTS.contains(words.text(name.start() - 1)) || CONTRASTS.contains(words.text(name.start() - 2));
    }

    private static Set<Integer> narrower(NameHit name, NameHit beside, int reach) {
        int gap = beside.start() >= name.end() ? beside.start() - name.end() : name.start() - beside.end();
        boolean inside = beside.inRecipe() && name.lines().containsAll(beside.lines());
        return inside && beside.lines().size() < name.lines().size() && gap <= reach ? beside.lines() : name.lines();
    }
}
