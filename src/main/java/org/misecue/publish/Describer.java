package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.compare.Comparison;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.scale.ScaledRecipe;

/**
 * Writes the text for a film's description box: what it makes, every ingredient with its amount, the allergens, what
 * the film does not say, the method in short and the chapters.
 */
public final class Describer {

    private Describer() {}

    /** @throws org.misecue.notice.BadInput if the limit has no room for title and allergens */
    public static Description describe(Edition edition, DescriptionSettings settings) {
        ScaledRecipe published = edition.batch();
        Optional<Comparison> comparison = edition.comparison();
        Recipe recipe = published.recipe();
        IngredientList list = IngredientList.of(published, edition.pantry(), settings);
        Chapters chapters = edition.chapters();
        FigureText figures = new FigureText(published);
        Draft draft = Draft.empty()
                .with(Draft.Part.TITLE, title(recipe, figures))
                .with(Draft.Part.FIGURES, figures.lines())
                .with(Draft.Part.INGREDIENTS, list.lines())
                .with(Draft.Part.ALLERGENS, list.allergens())
                .with(Draft.Part.UNSAID, comparison.map(list::unsaid).orElse(List.of()))
                .with(Draft.Part.METHOD, settings.method() ? method(recipe) : List.of())
                .with(Draft.Part.CHAPTERS, lines(chapters));
        Fitting fitting = Fitting.of(draft, list.shorterLines(), settings.limit(), Place.of(recipe.source()));
        List<Note> notes = new ArrayList<>(list.notes());
        notes.addAll(chapters.notes());
        if (!fitting.leftOut().isEmpty()) {
            notes.add(new Note(
                    Place.of(recipe.source()),
                    "to keep to %d characters the description leaves out: %s"
                            .formatted(settings.limit(), String.join("; ", fitting.leftOut()))));
        }
        comparison.ifPresent(known -> notes.addAll(ProducerNotes.of(known, recipe)));
        return new Description(fitting.draft().text(), chapters, fitting.leftOut(), List.copyOf(notes));
    }

    private static List<String> title(Recipe recipe, FigureText figures) {
        List<String> lines = new ArrayList<>();
        lines.add(SafeText.line(recipe.title()));
        figures.makes().ifPresent(lines::add);
        return lines;
    }

    private static List<String> method(Recipe recipe) {
        List<String> lines = new ArrayList<>();
        for (Step step : recipe.steps()) {
            lines.add(step.number() + ". " + Sentences.first(SafeText.line(step.text())));
        }
        return headed("Method", lines);
    }

    private static List<String> lines(Chapters chapters) {
        return headed(
                "Chapters", chapters.chapters().stream().map(Chapter::toString).toList());
    }

    static List<String> headed(String heading, List<String> lines) {
        if (lines.isEmpty()) {
            return lines;
        }
        List<String> all = new ArrayList<>(lines.size() + 1);
        all.add(heading);
        all.addAll(lines);
        return all;
    }
}
