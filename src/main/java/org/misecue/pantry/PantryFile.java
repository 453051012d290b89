package org.misecue.pantry;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;

/** Reads the {@code pantry.yaml} that comes with the program. Every row must name its sources. */
final class PantryFile {

    private PantryFile() {}

    /** @throws BadInput with file and line at the first bad row */
    static List<Ingredient> read(String file, InputStream in) {
        NameIndex names = new NameIndex();
        List<Ingredient> ingredients = new ArrayList<>();
        for (YamlRow row : YamlRows.read(file, in, PantryRow.KEYS)) {
            Ingredient ingredient = ingredient(row);
            claim(ingredient.name(), ingredient, names, row);
            ingredient.names().forEach(name -> claim(name, ingredient, names, row));
            ingredients.add(ingredient);
        }
        return List.copyOf(ingredients);
    }

    static void claim(String name, Ingredient ingredient, NameIndex names, YamlRow row) {
        names.add(name, ingredient).ifPresent(other -> {
            throw row.bad("“" + name + "” is a name of “" + other.name() + "” already");
        });
    }

    private static Ingredient ingredient(YamlRow yaml) {
        PantryRow row = new PantryRow(yaml);
        String kind = row.kind().orElse("other");
        return new Ingredient(
                row.name(),
                row.also(),
                row.heard(),
                kind,
                new Measures(yaml, Optional.empty()).over(List.of(), Kind.named(kind)),
                row.contains(),
                row.check(),
                row.keep().orElse(Storage.CUPBOARD),
                yaml.text("aisle"),
                row.beware(),
                yaml.text("source"));
    }
}
