package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.scale.ScaledRecipe;

/** The figures that are no ingredients: how much it makes, tin, oven and times. */
final class FigureText {

    private final Recipe recipe;
    private final ScaledRecipe published;

    FigureText(ScaledRecipe published) {
        this.published = published;
        this.recipe = published.recipe();
    }

    /** "Makes 12 squares" or "Serves 8", for the published batch. */
    Optional<String> makes() {
        return of(Setting.Kind.YIELD)
                .findFirst()
                .map(setting -> served(setting)
                        ? "Serves " + amount(setting)
                        : ("Makes " + amount(setting) + " " + SafeText.line(setting.what())).strip());
    }

    /** The same for machines: "12 squares", "8 servings". */
    Optional<String> yield() {
        return of(Setting.Kind.YIELD)
                .findFirst()
                .map(setting -> amount(setting) + " " + (served(setting) ? "servings" : SafeText.line(setting.what())))
                .map(String::strip);
    }

    private String amount(Setting setting) {
        Quantity quantity = setting.quantity().times(published.factor());
        boolean whole = quantity.amount().least().stream().allMatch(Rationals::isWhole);
        return (whole ? "" : "about ") + Amounts.text(quantity);
    }

    private static boolean served(Setting setting) {
        return setting.what().toLowerCase(Locale.ROOT).matches("serves|servings?|portions?|people");
    }

    /** Tin, oven and times in that order, each in its line. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, "Tin: ", "; ", of(Setting.Kind.PAN).map(FigureText::tin));
        add(lines, "Oven: ", ", then ", of(Setting.Kind.OVEN_TEMPERATURE).map(FigureText::oven));
        add(lines, "Times: ", ", ", of(Setting.Kind.DURATION).map(FigureText::time));
        if (!lines.isEmpty() && !published.factor().equals(Rationals.ONE)) {
            lines.add("Oven, tin and times are those of the recipe's own batch; for this one go by look and feel.");
        }
        return lines;
    }

    private static void add(List<String> lines, String head, String between, Stream<String> figures) {
        String all = figures.distinct().collect(Collectors.joining(between));
        if (!all.isEmpty()) {
            lines.add(head + all);
        }
    }

    private Stream<Setting> of(Setting.Kind kind) {
        return recipe.allSettings().stream().filter(setting -> setting.kind() == kind);
    }

    /** "2 × 20 cm round cake tin". */
    static String tin(Setting setting) {
        String count = setting.count() > 1 ? setting.count() + " × " : "";
        String what = SafeText.line(setting.what());
        String several = setting.count() > 1 && what.endsWith("tin") ? "s" : "";
        return (count + Amounts.text(setting.quantity()) + " " + what).strip() + several;
    }

    /** "180 °C (160 °C fan, gas 4)". */
    private static String oven(Setting setting) {
        String others = Stream.concat(
                        setting.fan().stream().map(fan -> Amounts.text(fan) + " fan"),
                        setting.also().stream().map(Amounts::text))
                .collect(Collectors.joining(", "));
        return Amounts.text(setting.quantity()) + (others.isEmpty() ? "" : " (" + others + ")");
    }

    private static String time(Setting setting) {
        return (SafeText.line(setting.what()) + " " + Amounts.text(setting.quantity())).strip();
    }
}
