package org.misecue.pantry;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.misecue.notice.BadInput;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** Reads {@code pantry.yaml}. Every row must name its sources. */
final class PantryFile {

    private static final Set<String> KEYS =
            Set.of("name", "also", "heard", "grams", "weighed", "contains", "check", "chilled", "aisle", "source");

    private static final Set<Unit> MEASURES =
            EnumSet.of(Unit.CUP, Unit.TABLESPOON, Unit.TEASPOON, Unit.STICK, Unit.EACH);

    private PantryFile() {}

    /** @throws BadInput with file and line at the first bad row */
    static List<Ingredient> read(String file, InputStream in) {
        NameIndex names = new NameIndex();
        List<Ingredient> ingredients = new ArrayList<>();
        for (YamlRow row : YamlRows.read(file, in, KEYS)) {
            Ingredient ingredient = ingredient(row);
            claim(ingredient.name(), ingredient, names, row);
            ingredient.names().forEach(name -> claim(name, ingredient, names, row));
            ingredients.add(ingredient);
        }
        return List.copyOf(ingredients);
    }

    private static void claim(String name, Ingredient ingredient, NameIndex names, YamlRow row) {
        names.add(name, ingredient).ifPresent(other -> {
            throw row.bad("“" + name + "” is a name of “" + other.name() + "” already");
        });
    }

    private static Ingredient ingredient(YamlRow row) {
        row.text("source");
        return new Ingredient(
                row.text("name"),
                row.texts("also"),
                row.texts("heard"),
                weights(row),
                allergens(row, "contains"),
                allergens(row, "check"),
                row.yes("chilled"),
                row.text("aisle"));
    }

    private static List<Weight> weights(YamlRow row) {
        if (!row.has("grams") && !row.has("weighed")) {
            return List.of();
        }
        String source = row.text("weighed");
        List<Weight> weights = new ArrayList<>();
        for (Map.Entry<String, RationalNumber> entry : row.numbers("grams").entrySet()) {
            Unit unit = Unit.ofCode(entry.getKey())
                    .filter(MEASURES::contains)
                    .orElseThrow(
                            () -> row.bad("“grams” are of a cup, tbsp, tsp, stick or each, not " + entry.getKey()));
            weights.add(new Weight(unit, entry.getValue(), source));
        }
        return List.copyOf(weights);
    }

    private static Set<Allergen> allergens(YamlRow row, String key) {
        Set<Allergen> allergens = EnumSet.noneOf(Allergen.class);
        for (String name : row.texts(key)) {
            try {
                allergens.add(Allergen.valueOf(name.toUpperCase(Locale.ROOT)));
            } catch (IllegalArgumentException e) {
                throw row.bad("“" + name + "” is not one of the EU's fourteen allergens: "
                        + EnumSet.allOf(Allergen.class).toString().toLowerCase(Locale.ROOT));
            }
        }
        return Collections.unmodifiableSet(allergens);
    }
}
