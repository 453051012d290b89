package org.misecue.recipe;

import java.util.List;

/** A part of the dish with its own ingredients: "sponge", "buttercream". The heading's "For the" is left off the name. */
public record Component(String name, List<IngredientLine> lines) {}
