package org.misecue.claims;

/**
 * What a claim is about.
 *
 * @param name of the part or of the ingredient, as the recipe names it where it does; empty for the dish
 */
public record Subject(Kind kind, String name) {

    /** The sorts of subject. */
    public enum Kind {
        DISH,
        PART,
        INGREDIENT
    }

    static final Subject DISH = new Subject(Kind.DISH, "");

    /** For a sentence: "the dish", "the icing", "plain flour". */
    public String words() {
        return switch (kind) {
            case DISH -> "the dish";
            case PART -> "the " + name;
            case INGREDIENT -> name;
        };
    }
}
