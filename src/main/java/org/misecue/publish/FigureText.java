package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.scale.ScaledRecipe;
import tech.units.indriya.function.RationalNumber;

/** The figures that are no ingredients: how much it makes, tin, oven and times; empty where none is written. */
final class FigureText {

    private final Recipe recipe;
    private final ScaledRecipe published;
    private final Labels labels;
    private final Amounts amounts;

    FigureText(ScaledRecipe published, Labels labels) {
        this.published = published;
        this.recipe = published.recipe();
        this.labels = labels;
        this.amounts = Amounts.in(labels);
    }

    /** "Makes 12 squares" or "Serves 8", for the published batch. */
    String makes() {
        return of(Setting.Kind.YIELD).findFirst().map(this::made).orElse("");
    }

    private String made(Setting setting) {
        if (served(setting)) {
            RationalNumber count = scaled(setting).amount().most().orElse(Rationals.ONE);
            return labels.text("serves", Map.of("amount", amount(setting), "count", Rationals.rounded(count, 2)));
        }
        return labels.text("makes", Map.of("amount", amount(setting), "what", SafeText.line(setting.what())))
                .strip();
    }

    /** The same for machines and in English: "12 squares", "8 servings". */
    static Optional<String> yield(ScaledRecipe published) {
        FigureText figures = new FigureText(published, Labels.in(Locale.ENGLISH));
        return figures.of(Setting.Kind.YIELD)
                .findFirst()
                .map(setting ->
                        figures.amount(setting) + " " + (served(setting) ? "servings" : SafeText.line(setting.what())))
                .map(String::strip);
    }

    private Quantity scaled(Setting setting) {
        return setting.quantity().times(published.factor());
    }

    private String amount(Setting setting) {
        Quantity quantity = scaled(setting);
        boolean whole = quantity.amount().least().stream().allMatch(Rationals::isWhole);
        String text = amounts.text(quantity);
        return whole ? text : labels.text("about", "amount", text);
    }

    private static boolean served(Setting setting) {
        return setting.what().toLowerCase(Locale.ROOT).matches("serves|servings?|portions?|people");
    }

    String tin() {
        return joined("; ", of(Setting.Kind.PAN).map(setting -> tin(setting, amounts)));
    }

    String oven() {
        return joined(
                labels.text("then") + " ", of(Setting.Kind.OVEN_TEMPERATURE).map(this::oven));
    }

    String times() {
        return joined(", ", of(Setting.Kind.DURATION).map(setting -> (SafeText.line(setting.what()) + " "
                        + amounts.text(setting.quantity()))
                .strip()));
    }

    /** Said of another batch than the recipe's own, whose figures these are. */
    String otherBatch() {
        boolean any = !(tin() + oven() + times()).isEmpty();
        return any && !published.factor().equals(Rationals.ONE) ? labels.text("other-batch") : "";
    }

    private static String joined(String between, Stream<String> figures) {
        return figures.distinct().collect(Collectors.joining(between));
    }

    private Stream<Setting> of(Setting.Kind kind) {
        return recipe.allSettings().stream().filter(setting -> setting.kind() == kind);
    }

    /** "2 × 20 cm round cake tins", "20 × 30 cm (8 in) baking tin, 4 cm deep". */
    static String tin(Setting setting, Amounts amounts) {
        Unit unit = setting.quantity().unit();
        List<String> sides = new ArrayList<>();
        List<String> others = new ArrayList<>();
        Stream.concat(Stream.of(setting.quantity()), setting.also().stream())
                .forEach(size -> (size.unit() == unit ? sides : others).add(amounts.text(size)));
        for (int at = 0; at < sides.size() - 1; at++) {
            sides.set(at, sides.get(at).replaceFirst("[\\h\u00a0]+\\p{L}+$", ""));
        }
        String count = setting.count() > 1 ? setting.count() + " × " : "";
        String what = SafeText.line(setting.what());
        String several = setting.count() > 1 && what.endsWith("tin") ? "s" : "";
        String size = String.join(" × ", sides) + (others.isEmpty() ? "" : " (" + String.join(", ", others) + ")");
        String depth =
                setting.depth().map(deep -> ", " + amounts.text(deep) + " deep").orElse("");
        return (count + size + " " + what).strip() + several + depth;
    }

    /** "180 °C (160 °C fan, gas 4)". */
    private String oven(Setting setting) {
        String others = Stream.concat(
                        setting.fan().stream().map(fan -> labels.text("fan", "amount", amounts.text(fan))),
                        setting.also().stream().map(amounts::text))
                .collect(Collectors.joining(", "));
        return amounts.text(setting.quantity()) + (others.isEmpty() ? "" : " (" + others + ")");
    }
}
