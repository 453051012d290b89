package org.misecue.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;

/** Recipes for tests, built without a reader: one component, lines from line 10, settings on line 3. */
final class Recipes {

    private Recipes() {}

    static Recipe of(List<IngredientLine> lines, Setting... settings) {
        return new Recipe(
                "Test bake",
                List.of(new Component("sponge", lines)),
                List.of(),
                List.of(settings),
                List.of(),
                "recipe.md");
    }

    /** @param lines each as "amount unit ingredient": "0.75 tsp salt" */
    static List<IngredientLine> lines(String... lines) {
        List<IngredientLine> made = new ArrayList<>();
        for (String line : lines) {
            String[] parts = line.split(" ", 3);
            Quantity quantity =
                    Quantity.of(Rationals.of(parts[0]), Unit.ofCode(parts[1]).orElseThrow());
            made.add(line(line, 10 + made.size(), Optional.of(quantity), parts[2]));
        }
        return made;
    }

    static IngredientLine line(String text, int number, Optional<Quantity> quantity, String ingredient) {
        return new IngredientLine(text, number, quantity, Optional.empty(), "", ingredient, "", false, List.of());
    }

    static Setting setting(Setting.Kind kind, Quantity quantity, String what, int count) {
        return new Setting(kind, quantity, Optional.empty(), List.of(), what, count, 0, 3);
    }
}
