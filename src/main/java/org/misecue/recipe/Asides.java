package org.misecue.recipe;

/** Words by which a step puts something by for later: "reserve 2 tbsp of the milk", "keeping back 50 g of the flour". */
final class Asides {

    private static final Cued PUT_BY = Cued.inAnyCase(
            "\\b(?:reserv(?:e|ing)|sav(?:e|ing)|(?:set|put|keep|hold)(?:t?ing)?\\h+(?:aside|back|by))\\b[^.;,]*$");

    private Asides() {}

    /**
     * Whether the clause that ends here puts by what comes next.
     *
     * @param text that the clause stands in
     */
    static boolean isBefore(Wording text, String before) {
        return PUT_BY.firstIn(text, before).isPresent();
    }
}
