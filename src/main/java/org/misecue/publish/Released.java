package org.misecue.publish;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.misecue.compare.Abouts;
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
        Abouts abouts = new Abouts();
        List<Item> items = new ArrayList<>();
        for (WeighedLine line : published.lines()) {
            items.add(new Item(
                    line.weighed().isPresent()
                            ? abouts.line(line.component(), line.written().ingredient())
                            : unmeasured(line),
                    line.weighed().map(QuantityWriter::text).orElse(""),
                    IngredientText.plain(line)));
        }
        for (Setting setting : published.recipe().allSettings()) {
            String amount = QuantityWriter.text(setting.quantity());
            items.add(new Item(abouts.setting(setting), amount, amount));
        }
        return new Publication(on, who, anyway, items, contains(published, pantry));
    }

    /** No finding is about such a line, so its words are all of its name. */
    private static String unmeasured(WeighedLine line) {
        return (line.component().isEmpty() ? "" : line.component() + ": ")
                + line.written().text() + ", unmeasured";
    }

    /** By the finest names: whoever was told of hazelnuts was not told of pistachios. */
    private static List<String> contains(ScaledRecipe published, Pantry pantry) {
        Labels labels = Labels.in(Labels.USUAL);
        Set<String> contains = new TreeSet<>();
        for (WeighedLine line : published.lines()) {
            String name = line.written().ingredient();
            AllergenLine.of(SafeText.line(name), SafeText.line(name), pantry.find(name), word -> word, labels)
                    .contains()
                    .forEach(named -> contains.add(
                            named.called().isEmpty() ? labels.allergen(named.allergen()) : named.called()));
        }
        return List.copyOf(contains);
    }
}
