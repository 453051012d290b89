package org.misecue.scale;

import java.util.Set;
import org.misecue.pantry.Ingredient;

/** What comes only whole. */
final class Eggs {

    private static final Set<String> NAMES = Set.of("egg", "egg white", "egg yolk");

    private Eggs() {}

    static boolean areEggs(Ingredient ingredient) {
        return NAMES.contains(ingredient.name());
    }
}
