package org.misecue.recipe;

import java.util.List;

/** A part of the dish with its own ingredients: "sponge", "buttercream". The heading's "For the" is left off the name. */
public record Component(String name, List<IngredientLine> lines) {

    /** The heading over the lines of a part of this name: "For the sponge", "To finish", or "Ingredients" without one. */
    public static String heading(String name) {
        if (name.isEmpty()) {
            return "Ingredients";
        }
        return name.startsWith("to ") ? "To " + name.substring(3) : "For the " + name;
    }
}
