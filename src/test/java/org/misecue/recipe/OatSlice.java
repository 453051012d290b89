package org.misecue.recipe;

import java.util.List;

/** One recipe, to be written as people keep theirs. */
final class OatSlice {

    static final String TITLE = "Plum and oat slice";
    static final String MAKES = "Makes 12 slices";
    static final List<String> BASE =
            List.of("175 g butter, cubed", "200 g plain flour", "100 g rolled oats", "¼ tsp fine salt");
    static final List<String> ICING = List.of("120 g icing sugar", "1–2 tbsp lemon juice");
    static final List<String> STEPS = List.of(
            "Heat the oven to 180 °C (160 °C fan) and line a 20 cm square tin.",
            "Rub the butter into the flour, oats and salt until it looks like coarse crumbs, press all of it into the tin"
                    + " with the back of a spoon and bake for 15 minutes.",
            "Mix the icing sugar with the lemon juice and drizzle it over the cold slice.");

    private OatSlice() {}

    /** The ingredient with its amount apart: "175 g" and "butter, cubed". */
    static String[] cells(String line) {
        int at = line.indexOf(' ', line.indexOf(' ') + 1);
        return new String[] {line.substring(0, at), line.substring(at + 1)};
    }
}
