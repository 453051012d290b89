package org.misecue.compare;

import static org.misecue.recipe.Setting.Kind.DURATION;
import static org.misecue.recipe.Setting.Kind.OVEN_TEMPERATURE;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.misecue.narration.Moment;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;

/** A recipe and a comparison made by hand, with every kind of finding; no engine has a part in it. */
final class PearBuns {

    static final List<IngredientLine> DOUGH = List.of(
            line("400 g spelt flour", 400, Unit.GRAM, "spelt flour"),
            line("250 ml milk & a drop more", 250, Unit.MILLILITRE, "milk"),
            line("60 g butter, soft", 60, Unit.GRAM, "butter"),
            line("1 tsp fine salt", 1, Unit.TEASPOON, "fine salt"),
            line("2 tsp \"<b>\" spice", 2, Unit.TEASPOON, "\"<b>\" spice"));
    static final List<IngredientLine> TOP = List.of(
            line("3 pears", 3, Unit.EACH, "pears"),
            line("50 g walnuts", 50, Unit.GRAM, "walnuts"),
            line("2 tbsp honey", 2, Unit.TABLESPOON, "honey"));
    static final Setting OVEN = setting(OVEN_TEMPERATURE, 200, Unit.CELSIUS, "", 2);
    static final Setting BAKE = setting(DURATION, 25, Unit.MINUTE, "bake", 2);

    private PearBuns() {}

    static Recipe recipe() {
        return new Recipe(
                "Pear buns",
                List.of(new Component("dough", DOUGH), new Component("top", TOP)),
                List.of(step(1, uses(0, 5), List.of()), step(2, uses(1, 3), List.of(OVEN, BAKE))),
                List.of(),
                List.of(),
                "pear-buns.md");
    }

    static Comparison comparison() {
        return new Comparison(
                "Pear buns",
                Rationals.ONE,
                List.of(
                        verdict(
                                "dough",
                                DOUGH.get(0),
                                Verdict.AGREES,
                                100,
                                "Said as written: 400 g.",
                                said(12, "<i>four hundred", 400)),
                        verdict(
                                "dough",
                                DOUGH.get(1),
                                Verdict.DIFFERS,
                                55,
                                "Said as 300 ml; 250 ml is written.",
                                said(40, "three hundred", 300)),
                        verdict(
                                "dough",
                                DOUGH.get(2),
                                Verdict.DIFFERS,
                                100,
                                "Said as 80 g; 60 g is written.",
                                said(63, "eighty", 80)),
                        verdict("dough", DOUGH.get(3), Verdict.UNSPOKEN, 90, "Nobody says how much."),
                        verdict("dough", DOUGH.get(4), Verdict.UNSPOKEN, 50, "Nobody says how much. Listen at 1:20."),
                        verdict("top", TOP.get(0), Verdict.AGREES, 45, "Said as written: 3.", said(150, "three", 3)),
                        verdict(
                                "top",
                                TOP.get(1),
                                Verdict.APPROXIMATE,
                                90,
                                "Said as about 50 g.",
                                said(170, "about fifty", 50)),
                        verdict(
                                "top",
                                TOP.get(2),
                                Verdict.APPROXIMATE,
                                40,
                                "Said as about 2 tbsp.",
                                said(170, "a couple", 2))),
                List.of(
                        new SettingVerdict(
                                OVEN,
                                Verdict.AGREES,
                                Confidence.FULL,
                                "Said as written: 200 °C.",
                                List.of(said(200, "two hundred", 200))),
                        new SettingVerdict(
                                BAKE,
                                Verdict.DIFFERS,
                                new Confidence(80),
                                "Said as 35 minutes; 25 minutes is written.",
                                List.of(said(3725, "thirty five", 35)))),
                List.of(
                        new Unwritten(
                                "rose paste",
                                Quantity.of(1, Unit.TEASPOON),
                                new Confidence(50),
                                List.of(said(90, "a teaspoon", 1))),
                        new Unwritten(
                                "sesame seeds",
                                Quantity.of(2, Unit.TABLESPOON),
                                new Confidence(95),
                                List.of(said(95, "two spoonfuls", 2)))));
    }

    private static LineVerdict verdict(
            String component, IngredientLine line, Verdict verdict, int percent, String reason, Evidence... evidence) {
        return new LineVerdict(component, line, verdict, new Confidence(percent), reason, List.of(evidence));
    }

    static Evidence said(long second, String deciding, long amount) {
        return new Evidence(
                Evidence.Via.SPOKEN,
                new Moment("main.vtt", Duration.ofSeconds(second)),
                Optional.of(Quantity.of(amount, Unit.GRAM)),
                "now & then " + deciding + " goes in",
                deciding);
    }

    private static IngredientLine line(String text, long amount, Unit unit, String name) {
        return new IngredientLine(
                text, 0, Optional.of(Quantity.of(amount, unit)), Optional.empty(), "", name, "", false, List.of());
    }

    private static Setting setting(Setting.Kind kind, long amount, Unit unit, String what, int step) {
        return new Setting(kind, new Quantity(Amount.of(amount), unit), Optional.empty(), List.of(), what, 1, step, 0);
    }

    private static List<Use> uses(int component, int lines) {
        return IntStream.range(0, lines)
                .mapToObj(line -> new Use(component, line, Optional.empty(), ""))
                .toList();
    }

    private static Step step(int number, List<Use> uses, List<Setting> settings) {
        return new Step(number, "Do it.", 0, uses, settings, List.of(), Duration.ZERO, Duration.ZERO);
    }
}
