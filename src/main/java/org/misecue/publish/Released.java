package org.misecue.publish;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.misecue.episode.Publication;
import org.misecue.episode.Publication.Item;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.Setting;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/** What of a published batch has to be remembered, so that a correction can tell what was wrong. */
public final class Released {

    private Released() {}

    /** @param anyway why it goes out in spite of what is undecided; empty where nothing is */
    public static Publication of(ScaledRecipe published, Pantry pantry, LocalDate on, String who, String anyway) {
        Map<String, Integer> names = new HashMap<>();
        List<Item> items = new ArrayList<>();
        for (WeighedLine line : published.lines()) {
            String part = line.component().isEmpty() ? "" : line.component() + ": ";
            items.add(new Item(
                    unlike(names, part + line.written().ingredient()),
                    line.weighed().map(QuantityWriter::text).orElse(""),
                    IngredientText.plain(line)));
        }
        for (Setting setting : published.recipe().allSettings()) {
            String amount = QuantityWriter.text(setting.quantity());
            items.add(new Item(unlike(names, called(setting)), amount, amount));
        }
        return new Publication(on, who, anyway, items, contains(published, pantry));
    }

    private static String called(Setting setting) {
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> "oven";
            case DURATION -> setting.what().isEmpty() ? "time" : setting.what();
            case PAN -> "tin";
            case YIELD -> "yield";
        };
    }

    private static String unlike(Map<String, Integer> names, String name) {
        int times = names.merge(name, 1, Integer::sum);
        return times == 1 ? name : name + " (" + times + ")";
    }

    private static List<String> contains(ScaledRecipe published, Pantry pantry) {
        Set<String> contains = new TreeSet<>();
        for (WeighedLine line : published.lines()) {
            String name = line.written().ingredient();
            AllergenLine.of(SafeText.line(name), SafeText.line(name), pantry.find(name), Emphasis.CAPITALS)
                    .contains()
                    .forEach(named -> contains.add(AllergenLine.labelled(named.allergen())));
        }
        return List.copyOf(contains);
    }
}
