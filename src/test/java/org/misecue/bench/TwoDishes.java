package org.misecue.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.recipe.Component;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;

/** Two recipes as one with the parts of both, one method after the other: a long day for the planner. */
final class TwoDishes {

    private TwoDishes() {}

    static Recipe of(Recipe one, Recipe other) {
        int steps = one.steps().size();
        int parts = one.components().size();
        List<Component> components = Stream.concat(
                        one.components().stream().map(part -> named(part, one)),
                        other.components().stream().map(part -> named(part, other)))
                .toList();
        List<Step> method = new ArrayList<>(one.steps());
        other.steps()
                .forEach(step -> method.add(new Step(
                        step.number() + steps,
                        step.text(),
                        step.line(),
                        step.uses().stream()
                                .map(use -> new Use(use.component() + parts, use.line(), use.part(), use.words()))
                                .toList(),
                        step.settings().stream()
                                .map(setting -> later(setting, steps))
                                .toList(),
                        step.techniques(),
                        step.handsOn(),
                        step.unattended())));
        return new Recipe(
                one.title() + " and " + other.title(), components, method, one.settings(), List.of(), one.source());
    }

    private static Component named(Component part, Recipe recipe) {
        return new Component(part.name().isEmpty() ? recipe.title() : part.name(), part.lines());
    }

    private static Setting later(Setting setting, int steps) {
        return new Setting(
                setting.kind(),
                setting.quantity(),
                setting.fan(),
                setting.also(),
                setting.what(),
                setting.count(),
                setting.step() + steps,
                setting.line(),
                setting.depth());
    }
}
