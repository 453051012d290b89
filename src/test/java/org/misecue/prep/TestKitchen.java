package org.misecue.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/** Builds recipes by hand, so that a test of the bowls does not depend on how recipes are read. */
public final class TestKitchen {

    private final String title;
    private final List<Component> components = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final List<Setting> settings = new ArrayList<>();
    private int fileLine = 2;

    public TestKitchen(String title) {
        this.title = title;
    }

    public TestKitchen component(String name) {
        components.add(new Component(name, new ArrayList<>()));
        return this;
    }

    /** A line such as {@code line("225", GRAM, "unsalted butter", "softened")}. */
    public TestKitchen line(String amount, Unit unit, String ingredient, String preparation) {
        return line(Optional.of(Quantity.of(Rationals.of(amount), unit)), ingredient, preparation);
    }

    public TestKitchen line(Optional<Quantity> quantity, String ingredient, String preparation) {
        fileLine++;
        String amount = quantity.map(QuantityWriter::text).orElse("");
        String text = (amount + " " + ingredient + (preparation.isEmpty() ? "" : ", " + preparation)).strip();
        components
                .get(components.size() - 1)
                .lines()
                .add(new IngredientLine(
                        text, fileLine, quantity, Optional.empty(), "", ingredient, preparation, false, List.of()));
        return this;
    }

    public TestKitchen unmeasured(String ingredient, String preparation) {
        return line(Optional.empty(), ingredient, preparation);
    }

    /** A step; techniques in one string, uses as "component/line" or "component/line/words", from 0. */
    public TestKitchen step(String text, String techniques, int handsOn, int unattended, String... uses) {
        List<Use> used = new ArrayList<>();
        for (String use : uses) {
            String[] parts = use.split("/");
            used.add(new Use(
                    Integer.parseInt(parts[0]),
                    Integer.parseInt(parts[1]),
                    Optional.empty(),
                    parts.length > 2 ? parts[2] : ""));
        }
        steps.add(new Step(
                steps.size() + 1,
                text,
                0,
                used,
                new ArrayList<>(),
                techniques.isEmpty() ? List.of() : List.of(techniques.split(" ")),
                Duration.ofMinutes(handsOn),
                Duration.ofMinutes(unattended)));
        return this;
    }

    /** A part of a line, used by the step last made. */
    public TestKitchen part(int component, int line, Quantity part) {
        step().uses().add(new Use(component, line, Optional.of(part), ""));
        return this;
    }

    /** A part of a line with the words that name it, used by the step last made. */
    TestKitchen part(int component, int line, Quantity part, String words) {
        step().uses().add(new Use(component, line, Optional.of(part), words));
        return this;
    }

    /** A setting of the step last made. */
    public TestKitchen setting(Setting.Kind kind, Quantity quantity, String what, int count) {
        step().settings()
                .add(new Setting(
                        kind,
                        quantity,
                        kind == Setting.Kind.OVEN_TEMPERATURE
                                ? Optional.of(Quantity.of(
                                        quantity.amount().least().orElseThrow().subtract(Rationals.of(20)),
                                        quantity.unit()))
                                : Optional.empty(),
                        List.of(),
                        what,
                        count,
                        step().number(),
                        0));
        return this;
    }

    private Step step() {
        return steps.get(steps.size() - 1);
    }

    public Recipe recipe() {
        return new Recipe(title, components, steps, settings, List.of(), "recipe.md");
    }

    /** Scaled exactly, without rounding. */
    public ScaledRecipe scaled(RationalNumber factor) {
        Weights weights = new Weights(Pantry.standard(), Household.METRIC);
        List<WeighedLine> lines = new ArrayList<>();
        for (Component component : components) {
            for (IngredientLine line : component.lines()) {
                Optional<Quantity> quantity = line.quantity().map(written -> written.times(factor));
                lines.add(new WeighedLine(
                        component.name(),
                        line,
                        quantity,
                        quantity,
                        quantity.flatMap(scaled -> weights.grams(scaled, line.ingredient())),
                        quantity.map(any -> Rationals.ZERO)));
            }
        }
        return new ScaledRecipe(recipe(), factor, lines, List.of());
    }

    public ScaledRecipe asWritten() {
        return scaled(Rationals.ONE);
    }
}
