package org.misecue.recipe;

/** An ingredient line with its place in the recipe. */
record LineRef(int component, int at, IngredientLine line) {

    /** The place tells lines apart. */
    @Override
    public int hashCode() {
        return 31 * component + at;
    }
}
