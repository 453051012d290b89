package org.misecue.recipe;

/** An ingredient line with its place in the recipe. */
record LineRef(int component, int at, IngredientLine line) {}
