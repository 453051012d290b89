package org.misecue.align;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.recipe.Step;
import org.misecue.recipe.TableFile;

/** Words by which work is spoken of that a recipe calls otherwise, from {@code talk-of-techniques.csv}. */
final class TechniqueTalk {

    private static final Map<String, Set<String>> STEMS = load();

    private TechniqueTalk() {}

    /** Their stems, for all that is done in the step. */
    static Set<String> of(Step step) {
        Set<String> stems = new HashSet<>();
        step.techniques().forEach(technique -> stems.addAll(STEMS.getOrDefault(technique, Set.of())));
        return stems;
    }

    private static Map<String, Set<String>> load() {
        Map<String, Set<String>> table = new HashMap<>();
        for (String row : TableFile.rows(TechniqueTalk.class, "talk-of-techniques.csv")) {
            String[] cells = row.split(" \\| ", -1);
            table.put(
                    cells[0],
                    List.of(cells[1].split(" ")).stream().map(Stem::of).collect(Collectors.toSet()));
        }
        return table;
    }
}
