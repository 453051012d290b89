package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

class BowlsAddUpProperties {

    private static final List<String> INGREDIENTS =
            List.of("plain flour", "whole milk", "large eggs", "caster sugar", "fine salt", "xyzzy crumbs");

    private static final List<String> TEXTS = List.of(
            "Mix the flour, the milk and the eggs. Then add the sugar.",
            "Fold in the flour in two additions, with the milk after each. Beat in the eggs in three parts.",
            "Whisk in the sugar a third at a time. Add the salt and the crumbs in two lots.");

    record Line(String ingredient, int amount, Unit unit) {}

    @Provide
    Arbitrary<List<Line>> lines() {
        return Combinators.combine(
                        Arbitraries.of(INGREDIENTS),
                        Arbitraries.integers().between(1, 900),
                        Arbitraries.of(Unit.GRAM, Unit.MILLILITRE, Unit.TABLESPOON, Unit.EACH))
                .as(Line::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(5);
    }

    @Provide
    Arbitrary<List<List<String>>> uses() {
        Arbitrary<String> words = Arbitraries.of(
                "", "", "half", "the rest", "a third of", "three quarters", "half of the remaining", "most of", "¼");
        Arbitrary<String> use = Combinators.combine(Arbitraries.integers().between(0, 4), words)
                .as((line, share) -> "0/" + line + (share.isEmpty() ? "" : "/" + share));
        return use.list().ofMaxSize(6).list().ofMinSize(1).ofMaxSize(4);
    }

    @Property(tries = 300)
    void the_bowls_of_a_line_add_up_to_the_line_in_every_take(
            @ForAll("lines") List<Line> lines,
            @ForAll("uses") List<List<String>> uses,
            @ForAll @IntRange(min = 1, max = 4) int takes,
            @ForAll @IntRange(min = 1, max = 9) int numerator) {
        TestKitchen kitchen = new TestKitchen("Invented").component("all");
        lines.forEach(line -> kitchen.line(String.valueOf(line.amount()), line.unit(), line.ingredient(), ""));
        for (List<String> step : uses) {
            String[] known = step.stream()
                    .filter(use -> use.charAt(2) - '0' < lines.size())
                    .toArray(String[]::new);
            kitchen.step(TEXTS.get(step.size() % TEXTS.size()), "fold", 5, 0, known);
        }
        ScaledRecipe scaled = kitchen.scaled(Rationals.of(numerator, 4));

        PrepPlan plan = PrepPlanner.plan(
                scaled, Pantry.standard(), PrepSettings.standard().withTakes(takes));

        for (WeighedLine line : scaled.lines()) {
            List<Content> contents = plan.bowls().stream()
                    .flatMap(bowl -> bowl.contents().stream())
                    .filter(content -> content.line() == line.written())
                    .toList();
            RationalNumber weighed = contents.stream()
                    .map(content -> content.weighed().amount().least().orElseThrow())
                    .reduce(Rationals.ZERO, RationalNumber::add);
            RationalNumber grams = contents.stream()
                    .flatMap(content -> content.grams().stream())
                    .reduce(Rationals.ZERO, RationalNumber::add);
            RationalNumber sets = Rationals.of(takes);
            assertThat(weighed)
                    .isEqualTo(line.weighed()
                            .orElseThrow()
                            .amount()
                            .least()
                            .orElseThrow()
                            .multiply(sets));
            assertThat(grams).isEqualTo(line.grams().orElse(Rationals.ZERO).multiply(sets));
            assertThat(contents).allSatisfy(content -> assertThat(
                            content.weighed().amount().least().orElseThrow().signum())
                    .isPositive());
        }
    }
}
