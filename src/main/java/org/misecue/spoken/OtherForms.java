package org.misecue.spoken;

import java.util.Set;

/** Words behind an ingredient that make it another one: "coconut essence", "milk powder", "lemon cordial". */
final class OtherForms {

    private static final Set<String> FORMS = Words.set(
            "essence extract powder syrup flour milk oil liqueur cordial jam sauce vinegar brandy essence "
                    + "marmalade curd spread icing custard frosting buttercream filling wine beer ale biscuit biscuits");

    /** Forms of one flavouring that stand in for each other. */
    private static final Set<String> FLAVOURINGS = Set.of("essence", "extract", "paste", "bean", "pod");

    /** "cardamom powder" is ground cardamom. */
    private static final Set<String> GROUND = Set.of("ground", "powdered");

    /** "coconut milk", but never "crumbs, milk over the top". */
    private static final Set<String> GIVE_MILK =
            Words.set("coconut almond oat oats rice soya soy cashew hazelnut hemp barley goat sheep butter malt");

    private OtherForms() {}

    /** Whether the word that follows a name of the lines makes it the name of something else. */
    static boolean isOne(String next, Set<Integer> lines, RecipeNames recipe) {
        boolean ground = next.equals("powder") && recipe.haveAny(lines, GROUND);
        boolean milkless = next.equals("milk") && !recipe.haveAny(lines, GIVE_MILK);
        return !ground
                && !milkless
                && FORMS.contains(next)
                && !(FLAVOURINGS.contains(next) && recipe.haveAny(lines, FLAVOURINGS));
    }
}
