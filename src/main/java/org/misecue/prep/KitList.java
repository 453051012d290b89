package org.misecue.prep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** The kit: scales and vessels, the tins that the recipe states, and the tools of each technique from {@code kit.yaml}. */
final class KitList {

    private KitList() {}

    static List<KitItem> of(Recipe recipe, List<Bowl> bowls, int takes) {
        List<KitItem> kit = new ArrayList<>();
        kit.add(new KitItem("scales, checked with a known weight", List.of()));
        kit.add(new KitItem("labels and a pen", List.of()));
        Map<Vessel, Integer> vessels = new EnumMap<>(Vessel.class);
        bowls.forEach(bowl -> vessels.merge(bowl.vessel(), 1, Integer::sum));
        vessels.forEach((vessel, count) -> kit.add(new KitItem(Wording.count(count, vessel.words()), List.of())));
        recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .map(setting -> new KitItem(
                        SettingWords.tin(setting, takes), setting.step() == 0 ? List.of() : List.of(setting.step())))
                .distinct()
                .forEach(kit::add);
        kit.addAll(tools(recipe.steps()));
        return kit;
    }

    /** The techniques that the table has a row for, be it an empty one. */
    static Set<String> known() {
        return Table.ROWS.keySet();
    }

    private static List<KitItem> tools(List<Step> steps) {
        Map<String, TreeSet<Integer>> wanted = new LinkedHashMap<>();
        for (Step step : steps) {
            for (String technique : step.techniques()) {
                for (String tool : Table.ROWS.getOrDefault(technique, List.of())) {
                    wanted.computeIfAbsent(tool, key -> new TreeSet<>()).add(step.number());
                }
            }
        }
        return wanted.entrySet().stream()
                .map(tool -> new KitItem(tool.getKey(), List.copyOf(tool.getValue())))
                .toList();
    }

    /** Read on first use. */
    private static final class Table {
        static final Map<String, List<String>> ROWS = Resources.yaml("kit.yaml", new TypeReference<>() {});
    }
}
