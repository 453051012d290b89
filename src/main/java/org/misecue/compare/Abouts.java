package org.misecue.compare;

import java.util.HashMap;
import java.util.Map;
import org.misecue.recipe.Setting;

/**
 * Names what findings are about, in words that stay the same from run to run: decisions and corrections are kept by them.
 * Equal names are told apart by their order in the recipe, so ask for the lines that state an amount in its order, then for
 * the settings.
 */
public final class Abouts {

    private final Map<String, Integer> given = new HashMap<>();

    /** "cake: unsalted butter". */
    public String line(String component, String ingredient) {
        return unlike(component.isEmpty() ? ingredient : component + ": " + ingredient);
    }

    /** "oven", "bake (2)". */
    public String setting(Setting setting) {
        return unlike(called(setting));
    }

    String unlike(String name) {
        int times = given.merge(name, 1, Integer::sum);
        return times == 1 ? name : name + " (" + times + ")";
    }

    static String called(Setting setting) {
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> "oven";
            case DURATION -> setting.what().isEmpty() ? "time" : setting.what();
            case PAN -> "tin";
            case YIELD -> "yield";
        };
    }
}
