package org.misecue.prep;

import java.util.ArrayList;
import java.util.List;
import org.misecue.recipe.Setting;

/** Ovens and tins in words. */
final class SettingWords {

    private SettingWords() {}

    /** "180 °C (fan 160 °C, gas 4)". */
    static String oven(Setting setting) {
        List<String> others = new ArrayList<>();
        setting.fan().ifPresent(fan -> others.add("fan " + Measures.text(fan)));
        setting.also().forEach(also -> others.add(Measures.text(also)));
        String main = Measures.text(setting.quantity());
        return others.isEmpty() ? main : main + " (" + String.join(", ", others) + ")";
    }

    /** "2 × 20 cm round cake tin", times a number of sets. */
    static String tin(Setting setting, int sets) {
        int count = Math.max(1, setting.count()) * sets;
        String size = Measures.text(setting.quantity());
        String what = setting.what().isBlank() ? "tin" : setting.what().strip();
        String tin = what.contains(size) ? what : size + " " + what;
        return count == 1 ? tin : count + " × " + tin;
    }
}
