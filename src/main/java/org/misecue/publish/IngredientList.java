package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
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
import tech.units.indriya.function.RationalNumber;

/**
 * The published ingredient list.
 *
 * @param lines with headings, in both measures where the settings ask for that
 * @param shorterLines the same with one measure each
 * @param allergens what the lines contain, and the labels to read
 * @param notes ingredients of which nothing is known, and names that mean something else to some viewers
 */
record IngredientList(
        List<String> lines, List<String> shorterLines, List<String> allergens, List<Entry> entries, List<Note> notes) {

    /** One line of the recipe as it is published, without its bullet. */
    record Entry(WeighedLine line, String text, String shorter, AllergenLine allergens) {}

    static IngredientList of(ScaledRecipe published, Pantry pantry, DescriptionSettings settings) {
        MeasureText measures = new MeasureText(pantry, settings.household());
        AllergenSummary summary = new AllergenSummary();
        List<Entry> entries = new ArrayList<>();
        List<Note> notes = new ArrayList<>();
        boolean honey = false;
        for (WeighedLine line : published.lines()) {
            Optional<Ingredient> known = pantry.find(line.written().ingredient());
            Entry entry = entry(line, known, measures, published, settings);
            entries.add(entry);
            String name = SafeText.line(line.written().ingredient());
            summary.add(name, entry.allergens());
            honey |= known.map(Ingredient::name).filter("honey"::equals).isPresent();
            pantry.beware(line.written().ingredient())
                    .ifPresent(sentence -> notes.add(new Note(
                            Place.of(published.recipe().source(), line.written().line()),
                            "“%s” may be taken for something else: %s".formatted(name, sentence))));
            if (known.isEmpty() && entry.allergens().nothing()) {
                notes.add(new Note(
                        Place.of(published.recipe().source(), line.written().line()),
                        "“%s” is not in the pantry, so the allergen lines say nothing of it; check it yourself"
                                .formatted(name)));
            }
        }
        return new IngredientList(
                headed(entries, Entry::text), headed(entries, Entry::shorter), summary.lines(honey), entries, notes);
    }

    private static Entry entry(
            WeighedLine line,
            Optional<Ingredient> known,
            MeasureText measures,
            ScaledRecipe published,
            DescriptionSettings settings) {
        Measures wanted = settings.measures();
        RationalNumber factor = published.factor();
        IngredientText text = IngredientText.of(line, quantity -> measures.text(line, quantity, factor, wanted));
        IngredientText shorter =
                IngredientText.of(line, quantity -> measures.text(line, quantity, factor, wanted.only()));
        AllergenLine allergens =
                AllergenLine.of(text.rest(), SafeText.line(line.written().ingredient()), known, settings.emphasis());
        return new Entry(
                line,
                new IngredientText(text.amount(), allergens.text()).line(),
                new IngredientText(shorter.amount(), allergens.text()).line(),
                allergens);
    }

    private static List<String> headed(List<Entry> entries, java.util.function.Function<Entry, String> text) {
        List<String> lines = new ArrayList<>();
        lines.add("Ingredients");
        String heading = "";
        for (Entry entry : entries) {
            String component = SafeText.line(entry.line().component());
            if (!component.equals(heading)) {
                lines.add("");
                lines.add(named(component));
                heading = component;
            }
            lines.add(IngredientText.BULLET + text.apply(entry));
        }
        return lines.size() == 1 ? List.of() : lines;
    }

    /** "For the dough", or a heading that begins with a capital as it is. */
    static String named(String component) {
        return Character.isLowerCase(component.codePointAt(0)) ? "For the " + component : component;
    }

    /** Every amount that is never said in the film, in recipe order, so that viewers find it. */
    List<String> unsaid(Comparison comparison) {
        List<String> unsaid = new ArrayList<>();
        for (Entry entry : entries) {
            boolean silent = comparison.written().stream()
                    .filter(verdict -> verdict.verdict() == Verdict.UNSPOKEN)
                    .anyMatch(verdict -> isAbout(verdict, entry.line()));
            if (silent) {
                unsaid.add(IngredientText.BULLET + entry.shorter());
            }
        }
        return Describer.headed("Not said in the film – the amounts are only written here:", unsaid);
    }

    private static boolean isAbout(LineVerdict verdict, WeighedLine line) {
        return verdict.component().equals(line.component()) && verdict.line().equals(line.written());
    }
}
