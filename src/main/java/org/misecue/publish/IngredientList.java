package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.misecue.compare.Comparison;
import org.misecue.compare.LineVerdict;
import org.misecue.compare.Verdict;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/**
 * The published ingredient list.
 *
 * @param entries the lines in recipe order
 * @param allergens what the lines contain, and the labels to read
 * @param notes ingredients of which nothing is known, and names that mean something else to some viewers
 */
record IngredientList(List<Entry> entries, List<String> allergens, List<Note> notes) {

    /**
     * One line of the recipe as it is published.
     *
     * @param amount in both measures where the settings ask for that; empty where the recipe states none
     * @param shorter the same in one measure
     * @param rest the recipe's words behind the amount, the allergens marked
     */
    record Entry(WeighedLine line, String amount, String shorter, Marked rest) {

        Marked text() {
            return rest.behind(amount);
        }

        Marked shorterText() {
            return rest.behind(shorter);
        }
    }

    static IngredientList of(ScaledRecipe published, Pantry pantry, DescriptionSettings settings, Labels labels) {
        Writer writer = new Writer(published, pantry, settings, labels);
        AllergenSummary summary = new AllergenSummary(labels);
        List<Entry> entries = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        boolean honey = false;
        for (WeighedLine line : published.lines()) {
            Optional<Ingredient> known = pantry.find(line.written().ingredient());
            IngredientText text = writer.text(line);
            String name = SafeText.line(line.written().ingredient());
            AllergenLine allergens = AllergenLine.of(text.rest(), name, known, Marked::mark, labels);
            entries.add(new Entry(line, text.amount(), writer.shorter(line), new Marked(allergens.text())));
            summary.add(name, allergens);
            honey |= known.map(Ingredient::name).filter("honey"::equals).isPresent();
            Place place = Place.of(published.recipe().source(), line.written().line());
            pantry.beware(line.written().ingredient())
                    .ifPresent(sentence -> notes.add(
                            new Note(place, "“%s” may be taken for something else: %s".formatted(name, sentence))));
            if (known.isEmpty() && allergens.nothing()) {
                notes.add(new Note(
                        place,
                        "“%s” is not in the pantry, so the allergen lines say nothing of it; check it yourself"
                                .formatted(name)));
            }
        }
        return new IngredientList(entries, summary.lines(honey), notes);
    }

    /** Writes lines in the measures that are wanted. */
    private record Writer(ScaledRecipe published, MeasureText measures, Measures wanted, boolean english) {

        Writer(ScaledRecipe published, Pantry pantry, DescriptionSettings settings, Labels labels) {
            this(
                    published,
                    new MeasureText(pantry, settings.household(), Amounts.in(labels)),
                    settings.measures(),
                    labels.language().getLanguage().equals(Locale.ENGLISH.getLanguage()));
        }

        IngredientText text(WeighedLine line) {
            return in(line, wanted);
        }

        String shorter(WeighedLine line) {
            return in(line, wanted.only()).amount();
        }

        /** The "of" of "a pinch of salt" goes with an English amount only. */
        private IngredientText in(WeighedLine line, Measures asked) {
            IngredientText text =
                    IngredientText.of(line, quantity -> measures.text(line, quantity, published.factor(), asked));
            return english ? text : new IngredientText(text.amount().replaceFirst(" of$", ""), text.rest());
        }
    }

    /** "For the dough", "To finish", or a heading that begins with a capital as it is. */
    static String named(String component) {
        if (component.isEmpty() || !Character.isLowerCase(component.codePointAt(0))) {
            return component;
        }
        return component.startsWith("to ") ? "To " + component.substring(3) : "For the " + component;
    }

    /** Every line whose amount is never said in the film, in recipe order, so that viewers find it. */
    List<Entry> unsaid(Comparison comparison) {
        return entries.stream()
                .filter(entry -> comparison.written().stream()
                        .filter(verdict -> verdict.verdict() == Verdict.UNSPOKEN)
                        .anyMatch(verdict -> isAbout(verdict, entry.line())))
                .toList();
    }

    private static boolean isAbout(LineVerdict verdict, WeighedLine line) {
        return verdict.component().equals(line.component()) && verdict.line().equals(line.written());
    }
}
