package org.misecue.compare;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.claims.Claim;
import org.misecue.claims.Via;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** Puts verdicts into the producer's words, and numbers them in the order of the recipe. */
final class FindingWriter {

    private final Recipe recipe;
    private final AllergenCaution allergens;
    private int lines;
    private int settings;
    private int added;
    private int shown;
    private int claims;
    private final Abouts abouts = new Abouts();

    FindingWriter(Recipe recipe, Pantry pantry) {
        this.recipe = recipe;
        this.allergens = new AllergenCaution(pantry);
    }

    Finding of(LineVerdict line) {
        List<Integer> steps = stepsOf(line.line());
        String where = Stream.of(line.component(), steps(steps))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        return new Finding(
                "line-" + ++lines,
                abouts.line(line.component(), line.line().ingredient()),
                Finding.Subject.LINE,
                line.line().ingredient(),
                line.line().text(),
                where,
                word(line.verdict()),
                line.confidence(),
                line.reason(),
                line.verdict() == Verdict.DIFFERS ? allergens.of(line.line()) : "",
                line.line().quantity(),
                line.evidence());
    }

    Finding of(SettingVerdict verdict) {
        int step = verdict.setting().step();
        return new Finding(
                "setting-" + ++settings,
                abouts.setting(verdict.setting()),
                subject(verdict.setting()),
                Abouts.called(verdict.setting()),
                name(verdict.setting()),
                steps(step == 0 ? List.of() : List.of(step)),
                word(verdict.verdict()),
                verdict.confidence(),
                verdict.reason(),
                "",
                Optional.of(verdict.setting().quantity()),
                verdict.evidence());
    }

    Finding of(Unwritten one) {
        String amount = QuantityWriter.text(one.quantity());
        return new Finding(
                "added-" + ++added,
                abouts.unlike("added: " + one.ingredient()),
                Finding.Subject.ADDED,
                one.ingredient(),
                amount + " " + one.ingredient(),
                "",
                "added",
                one.confidence(),
                told(one.evidence()) + " as " + amount + "; no line of the recipe has it.",
                allergens.ofAdded(one.ingredient()),
                Optional.empty(),
                one.evidence());
    }

    Finding of(Claim claim) {
        List<Evidence> evidence = Stream.concat(claim.moment().stream(), claim.again().stream())
                .map(moment -> new Evidence(
                        claim.via() == Via.SHOWN ? Evidence.Via.SHOWN : Evidence.Via.SPOKEN,
                        moment,
                        Optional.empty(),
                        claim.quote(),
                        claim.words(),
                        claim.doubtful()))
                .toList();
        return new Finding(
                "claim-" + ++claims,
                abouts.unlike("claim: " + claim.key().replace(" | ", ", ")),
                Finding.Subject.CLAIM,
                claim.words(),
                "“" + claim.words() + "”",
                claim.via() == Via.WRITTEN
                        ? "written, " + claim.place()
                        : claim.about().words(),
                claim.ruling().code(),
                claim.doubtful() ? Confidence.NONE : Confidence.FULL,
                claim.reason(),
                claim.caution(),
                Optional.empty(),
                evidence);
    }

    /** An amount on screen that fits nothing, or cannot be read. */
    Finding ofUnplaced(Evidence one) {
        return new Finding(
                "shown-" + ++shown,
                abouts.unlike("shown: " + one.quote()),
                Finding.Subject.SHOWN,
                one.quote(),
                "“" + one.quote() + "”",
                "",
                one.doubtful() ? "shown, unreadable" : "shown, fits nothing",
                Confidence.NONE,
                one.doubtful()
                        ? "On screen, but it cannot be read for certain: look."
                        : "On screen, and nothing in the recipe has such an amount by such a name: look.",
                "",
                Optional.empty(),
                List.of(one));
    }

    private static String told(List<Evidence> evidence) {
        return evidence.stream().allMatch(one -> one.via() == Evidence.Via.SHOWN) ? "Shown" : "Said";
    }

    private static Finding.Subject subject(Setting setting) {
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> Finding.Subject.OVEN;
            case DURATION -> Finding.Subject.TIME;
            case PAN -> Finding.Subject.TIN;
            case YIELD -> Finding.Subject.YIELD;
        };
    }

    static String word(Verdict verdict) {
        return verdict == Verdict.UNSPOKEN ? "never said" : verdict.code();
    }

    private List<Integer> stepsOf(IngredientLine line) {
        return recipe.steps().stream()
                .filter(step ->
                        step.uses().stream().anyMatch(use -> use.in(recipe).equals(line)))
                .map(Step::number)
                .toList();
    }

    private static String steps(List<Integer> steps) {
        String numbers = steps.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return steps.isEmpty() ? "" : (steps.size() == 1 ? "step " : "steps ") + numbers;
    }

    /** How a setting is called for people: "Oven: 180 °C", "Bake: 45–50 minutes". */
    static String name(Setting setting) {
        String figure = QuantityWriter.text(setting.quantity());
        return switch (setting.kind()) {
            case OVEN_TEMPERATURE -> "Oven: " + figure;
            case DURATION -> (setting.what().isEmpty() ? "Time" : capital(setting.what())) + ": " + figure;
            case PAN -> "Tin: " + (setting.count() > 1 ? setting.count() + " × " : "") + figure + " " + setting.what();
            case YIELD -> "Makes: " + figure + " " + setting.what();
        };
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
