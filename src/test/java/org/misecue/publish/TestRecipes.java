package org.misecue.publish;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.align.Alignment;
import org.misecue.align.StepSpan;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/** Recipes for the tests, made from written lines. */
final class TestRecipes {

    private TestRecipes() {}

    /** Two components, two tins, an oven with fan and gas; nobody's recipe. */
    static Recipe pearCake() {
        return new Recipe(
                "Pear and rye cake",
                List.of(
                        component(
                                "cake",
                                "175g unsalted butter, softened",
                                "150 g (5 oz) light muscovado sugar",
                                "3 large eggs, beaten",
                                "150 g plain flour",
                                "75 g rye flour",
                                "1½ tsp baking powder",
                                "2–3 tbsp milk",
                                "1 x 400 g tin pears, drained",
                                "a pinch of salt"),
                        component(
                                "crumble",
                                "50 g hazelnuts, roughly chopped",
                                "25 g dark chocolate (70%), grated",
                                "1 tbsp runny honey",
                                "icing sugar, to dust (optional)")),
                List.of(
                        step(1, "Heat the oven to 180 °C (160 °C fan, gas 4). Butter two 20 cm tins."),
                        step(2, "In a large bowl, beat the butter and sugar until pale. Scrape down the sides."),
                        step(3, "Beat in the eggs one at a time, then fold in both flours and the baking powder."),
                        step(4, "Divide between the tins, lay the pears on top and bake for 25–30 minutes.")),
                List.of(
                        setting(Setting.Kind.YIELD, 12, Unit.EACH, "slices"),
                        new Setting(
                                Setting.Kind.PAN,
                                Quantity.of(20, Unit.CENTIMETRE),
                                Optional.empty(),
                                List.of(),
                                "round cake tins",
                                2,
                                0,
                                3),
                        new Setting(
                                Setting.Kind.OVEN_TEMPERATURE,
                                Quantity.of(180, Unit.CELSIUS),
                                Optional.of(Quantity.of(160, Unit.CELSIUS)),
                                List.of(Quantity.of(4, Unit.GAS_MARK)),
                                "heat",
                                1,
                                1,
                                20),
                        setting(Setting.Kind.DURATION, 30, Unit.MINUTE, "bake")),
                List.of(),
                "recipe.md");
    }

    static Component component(String name, String... lines) {
        List<IngredientLine> read = new ArrayList<>();
        for (String line : lines) {
            read.add(line(line, read.size() + 5));
        }
        return new Component(name, read);
    }

    /** A line whose name ends at the first comma or bracket. */
    static IngredientLine line(String text, int number) {
        Optional<WrittenQuantity> lead = new QuantityReader().read(text);
        String[] parts =
                text.substring(lead.map(WrittenQuantity::end).orElse(0)).split("[,(]", 2);
        return new IngredientLine(
                text,
                number,
                lead.map(WrittenQuantity::quantity),
                lead.flatMap(WrittenQuantity::alternative),
                lead.map(WrittenQuantity::packing).orElse(""),
                parts[0].strip(),
                parts.length > 1 ? parts[1].replace(")", "").strip() : "",
                text.contains("(optional)"),
                List.of());
    }

    static Step step(int number, String text) {
        List<String> techniques = text.contains("bake") ? List.of("bake") : List.of();
        Duration unattended = text.contains("bake") ? Duration.ofMinutes(30) : Duration.ZERO;
        return new Step(number, text, 19 + number, List.of(), List.of(), techniques, Duration.ofMinutes(5), unattended);
    }

    static Setting setting(Setting.Kind kind, long value, Unit unit, String what) {
        return new Setting(kind, Quantity.of(value, unit), Optional.empty(), List.of(), what, 1, 0, 2);
    }

    static ScaledRecipe asWritten(Recipe recipe) {
        return times(recipe, Rationals.ONE);
    }

    /** Multiplied without rounding; grams are known for masses only. */
    static ScaledRecipe times(Recipe recipe, RationalNumber factor) {
        List<WeighedLine> lines = new ArrayList<>();
        for (Component component : recipe.components()) {
            for (IngredientLine line : component.lines()) {
                Optional<Quantity> scaled = line.quantity().map(quantity -> quantity.times(factor));
                Optional<RationalNumber> grams = scaled.filter(quantity -> quantity.unit() == Unit.GRAM)
                        .flatMap(quantity -> quantity.amount().most());
                lines.add(new WeighedLine(
                        component.name(), line, scaled, scaled, grams, scaled.map(any -> Rationals.ZERO)));
            }
        }
        return new ScaledRecipe(recipe, factor, lines, List.of());
    }

    /** Spans on {@code main.vtt} from "step start end" rows, in seconds. */
    static Alignment alignment(long[]... rows) {
        List<StepSpan> spans = new ArrayList<>();
        for (long[] row : rows) {
            spans.add(new StepSpan((int) row[0], "main.vtt", Duration.ofSeconds(row[1]), Duration.ofSeconds(row[2])));
        }
        return new Alignment(spans);
    }
}
