package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;

/**
 * Writes the text for a film's description box: what it makes, every ingredient with its amount, the allergens, what
 * the film does not say, what was offered instead, the method and the chapters.
 */
public final class Describer {

    private Describer() {}

    /** By the template of the program. */
    public static Description describe(Edition edition, DescriptionSettings settings) {
        return describe(edition, settings, PublishTemplates.standard());
    }

    /** @throws org.misecue.notice.BadInput if the limit has no room for title and allergens */
    public static Description describe(Edition edition, DescriptionSettings settings, PublishTemplates templates) {
        PublishedNames names = new PublishedNames(edition, settings);
        Template template = templates.description();
        Labels labels = names.labels();
        String link = labels.text("link");
        Draft written = new Draft(settings.links().in(names.all(), link));
        Draft draft = settings.links() == Links.KEEP
                ? written
                : written.without("url").without("video-url");
        Function<Draft, String> writing = each -> tidy(template.fill(each.names()));
        Fitting fitting = Fitting.of(
                draft,
                new Fitting.Shorter(
                        linked(settings, names.shorterIngredients(), link),
                        linked(settings, names.shorterMethod(), link),
                        labels.text("goes-on")),
                writing,
                settings.limit(),
                Place.of(edition.recipe().source()));
        return new Description(
                fitting.text(),
                names.chapters(),
                fitting.leftOut(),
                notes(edition, settings, names, template, fitting));
    }

    private static Object linked(DescriptionSettings settings, Object value, String note) {
        return settings.links().in(Map.of("value", value), note).getOrDefault("value", value);
    }

    /** One empty line between parts, none at either end; no line ends in spaces. */
    static String tidy(String text) {
        return text.replace("\r", "")
                        .replaceAll("[ \\t]+\\n", "\n")
                        .replaceAll("\\n{3,}", "\n\n")
                        .strip()
                + "\n";
    }

    private static List<Note> notes(
            Edition edition, DescriptionSettings settings, PublishedNames names, Template template, Fitting fitting) {
        Recipe recipe = edition.recipe();
        List<Note> notes = new ArrayList<>(names.list().notes());
        notes.addAll(names.chapters().notes());
        if (!template.names("allergens")) {
            notes.add(new Note(
                    Place.of(template.file()),
                    "the template does not name “allergens”, so the description does not sum them up"));
        }
        if (settings.links() != Links.KEEP) {
            notes.addAll(addresses(recipe));
        }
        if (!fitting.leftOut().isEmpty()) {
            notes.add(new Note(
                    Place.of(recipe.source()),
                    "to keep to %d characters the description leaves out: %s"
                            .formatted(settings.limit(), String.join("; ", fitting.leftOut()))));
        }
        edition.comparison().ifPresent(known -> notes.addAll(ProducerNotes.of(known, recipe)));
        return List.copyOf(notes);
    }

    /** Where the recipe has an address that the description has not. */
    private static List<Note> addresses(Recipe recipe) {
        List<Integer> lines = new ArrayList<>();
        recipe.lines().stream()
                .filter(line -> Links.anyIn(line.text()))
                .map(IngredientLine::line)
                .forEach(lines::add);
        recipe.steps().stream()
                .filter(step -> Links.anyIn(step.text()))
                .map(Step::line)
                .forEach(lines::add);
        return lines.stream()
                .map(
                        line -> new Note(
                                Place.of(recipe.source(), line),
                                "the description leaves out the web address that stands here; “links: keep” under “publish:” keeps it"))
                .toList();
    }
}
