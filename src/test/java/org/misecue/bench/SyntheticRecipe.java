package org.misecue.bench;

import static org.misecue.bench.ArchiveWords.any;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * An invented recipe.
 *
 * @param steps the method, each with what goes in
 */
record SyntheticRecipe(String title, List<Step> steps) {

    /** @param unit empty where it is counted */
    record Line(int amount, String unit, String name) {
        String written() {
            return unit.isEmpty() ? amount + " " + name : amount + " " + unit + " " + name;
        }
    }

    record Step(String text, List<Line> lines) {}

    static SyntheticRecipe of(ArchiveWords words, Random random) {
        Line flour = weighed(words.flours(), random);
        Line fat = weighed(words.fats(), random);
        Line sugar = weighed(words.sugars(), random);
        Line nuts = weighed(words.nuts(), random);
        Line fruit = weighed(words.fruits(), random);
        Line topping = weighed(words.toppings(), random);
        Line liquid = amount(words.liquids(), "ml", random);
        Line eggs = new Line(2 + random.nextInt(3), "", "large eggs");
        Line powder = new Line(1 + random.nextInt(2), "tsp", "baking powder");
        Line spice = new Line(1 + random.nextInt(2), "tsp", any(words.spices(), random));
        Line extract = new Line(1 + random.nextInt(2), "tsp", any(words.extracts(), random));
        int heat = 160 + 10 * random.nextInt(5);
        int minutes = 20 + 5 * random.nextInt(8);
        String title = any(words.manners(), random) + " " + one(fruit) + " and " + one(nuts) + " "
                + any(words.bakes(), random);
        List<Step> steps = List.of(
                step("Heat the oven to %d °C (%d °C fan) and line a 20 cm tin.".formatted(heat, heat - 20)),
                step("Whisk the %s, %s and %s together in a bowl.", flour, powder, spice),
                step("Beat the %s with the %s until pale and fluffy.", fat, sugar),
                step("Beat in the %s one at a time, then the %s.", eggs, extract),
                step("Fold in the dry mix, then stir in the %s.", liquid),
                step("Fold through the %s and the %s.", fruit, nuts),
                step("Scrape into the tin and bake for %d minutes, until risen and golden.".formatted(minutes)),
                step("Leave to cool in the tin for 15 minutes, then spread with the %s.", topping));
        return new SyntheticRecipe(capital(title), steps);
    }

    String written() {
        StringBuilder out = new StringBuilder("# " + title + "\n\nMakes 12 slices\n\n## Ingredients\n\n");
        steps.forEach(step -> step.lines()
                .forEach(line -> out.append("- ").append(line.written()).append('\n')));
        out.append("\n## Method\n\n");
        for (int i = 0; i < steps.size(); i++) {
            out.append(i + 1).append(". ").append(steps.get(i).text()).append('\n');
        }
        return out.toString();
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        steps.forEach(step -> lines.addAll(step.lines()));
        return lines;
    }

    private static Step step(String text, Line... lines) {
        return new Step(
                text.formatted(
                        (Object[]) List.of(lines).stream().map(Line::name).toArray(String[]::new)),
                List.of(lines));
    }

    private static Line weighed(Map<String, List<Integer>> kinds, Random random) {
        return amount(kinds, "g", random);
    }

    private static Line amount(Map<String, List<Integer>> kinds, String unit, Random random) {
        String name = any(List.copyOf(kinds.keySet()), random);
        List<Integer> range = kinds.get(name);
        int steps = (range.get(1) - range.get(0)) / range.get(2);
        return new Line(range.get(0) + range.get(2) * random.nextInt(steps + 1), unit, name);
    }

    private static String one(Line line) {
        return line.name().replaceAll("ies$", "y").replaceAll("s$", "");
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
