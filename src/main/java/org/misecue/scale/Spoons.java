package org.misecue.scale;

import java.util.Locale;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

/** Whose spoons and cups a recipe means where nobody says so. */
public final class Spoons {

    private Spoons() {}

    /**
     * Those of the language's country: Australia has its 20 ml tablespoon, the United States their customary cup. Other
     * kitchens are metric, unless the list is measured by cups or sticks and weighs nothing in grams: that is an American
     * recipe, whoever films it (common practice, no source).
     */
    public static Household of(Recipe recipe, Locale language) {
        return switch (language.getCountry()) {
            case "AU" -> Household.AUSTRALIAN;
            case "US" -> Household.US_CUSTOMARY;
            default -> isAmerican(recipe) ? Household.US_CUSTOMARY : Household.METRIC;
        };
    }

    private static boolean isAmerican(Recipe recipe) {
        return recipe.lines().stream().anyMatch(line -> measures(line, Unit.CUP) || measures(line, Unit.STICK))
                && recipe.lines().stream()
                        .noneMatch(line -> measures(line, Unit.GRAM) || measures(line, Unit.KILOGRAM));
    }

    private static boolean measures(IngredientLine line, Unit unit) {
        return line.quantity().filter(quantity -> quantity.unit() == unit).isPresent();
    }

    /** "tsp 5 ml, tbsp 20 ml, cup 250 ml (Australian)": for the line that tells which were taken. */
    static String words(Household household) {
        String whose =
                switch (household) {
                    case METRIC -> "metric";
                    case US_CUSTOMARY -> "US";
                    case US_LABEL -> "US labels";
                    case IMPERIAL -> "imperial";
                    case AUSTRALIAN -> "Australian";
                };
        return "tsp %s ml, tbsp %s ml, cup %s ml (%s)"
                .formatted(
                        millilitres(Unit.TEASPOON, 1, household),
                        millilitres(Unit.TABLESPOON, 1, household),
                        millilitres(Unit.CUP, 0, household),
                        whose);
    }

    private static String millilitres(Unit measure, int places, Household household) {
        return Rationals.rounded(measure.toBase(Rationals.ONE, household), places)
                .toPlainString();
    }

    /** Whether a list is measured by anything whose size the kitchen's country decides. */
    static boolean matterTo(ScaledRecipe scaled) {
        return scaled.lines().stream()
                .flatMap(line -> line.exact().stream())
                .anyMatch(quantity -> quantity.unit() == Unit.TEASPOON
                        || quantity.unit() == Unit.TABLESPOON
                        || quantity.unit() == Unit.CUP
                        || quantity.unit() == Unit.FLUID_OUNCE
                        || quantity.unit() == Unit.PINT);
    }
}
