package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.recipe.manuscript.Line;
import org.misecue.recipe.manuscript.Manuscript;

/** Makes a recipe of a manuscript, and notes what was not understood. */
final class RecipeParser {

    private final String source;
    private final List<Note> notes = new ArrayList<>();
    private final IngredientLineParser lineParser = new IngredientLineParser();

    RecipeParser(String source) {
        this.source = source;
    }

    Recipe parse(Manuscript manuscript) {
        Outline outline = Outline.of(manuscript);
        List<Component> components = components(outline);
        if (components.isEmpty()) {
            throw new BadInput(
                    Place.of(source),
                    "no ingredients were found; put them under a heading \"Ingredients\", one to a line, amount first.");
        }
        List<Setting> settings = settings(outline);
        List<Step> steps = steps(outline, components, settings);
        if (steps.isEmpty()) {
            note(0, "no method was found; put its steps under a heading \"Method\".");
        }
        List<Setting> whole = withYield(settings, steps);
        Recipe recipe = new Recipe(title(outline), components, steps, whole, List.copyOf(notes), source);
        RecipeCheck.ALL.forEach(check -> notes.addAll(check.notes(recipe)));
        return new Recipe(recipe.title(), components, steps, whole, List.copyOf(notes), source);
    }

    private String title(Outline outline) {
        if (!outline.title().isEmpty()) {
            return outline.title();
        }
        String file = source.substring(Math.max(source.lastIndexOf('/'), source.lastIndexOf('\\')) + 1);
        return file.contains(".") ? file.substring(0, file.lastIndexOf('.')) : file;
    }

    private List<Component> components(Outline outline) {
        List<Component> components = new ArrayList<>();
        for (Outline.Part part : outline.parts()) {
            components.add(new Component(
                    part.name(), part.lines().stream().map(this::line).toList()));
        }
        return List.copyOf(components);
    }

    private IngredientLine line(Line line) {
        IngredientLine read = lineParser.parse(line);
        if (lineParser.refuses(read)) {
            note(
                    line.number(),
                    "the amount in \"%s\" cannot be right and is not used; write it as 225 g or 1½ tsp."
                            .formatted(line.text()));
        } else if (BareCount.isDoubtful(read)) {
            note(
                    line.number(),
                    "\"%s\" counts pieces of what is weighed or measured; is a unit missing? Write it as 225 g or 1½ tsp."
                            .formatted(line.text()));
        } else if (line.text().length() > IngredientLineParser.LONGEST) {
            note(
                    line.number(),
                    "this line of %d characters is too long for an ingredient and is kept as it stands; put one ingredient on each line."
                            .formatted(line.text().length()));
        } else if (read.ingredient().isEmpty()) {
            note(
                    line.number(),
                    "\"%s\" names no ingredient; write amount and name on one line.".formatted(line.text()));
        }
        return read;
    }

    private static List<Setting> settings(Outline outline) {
        List<Setting> settings = new ArrayList<>();
        for (Line line : outline.head()) {
            YieldReader.read(line.text(), 0, line.number())
                    .filter(found -> settings.stream().noneMatch(each -> each.kind() == Setting.Kind.YIELD))
                    .ifPresent(settings::add);
            settings.addAll(TinReader.read(line.text(), 0, line.number()));
            settings.addAll(OvenReader.read(line.text(), 0, line.number()));
        }
        return settings;
    }

    private List<Step> steps(Outline outline, List<Component> components, List<Setting> known) {
        UseFinder finder = new UseFinder(components);
        List<Step> steps = new ArrayList<>();
        for (Outline.MethodLine line : outline.method()) {
            steps.add(StepParser.parse(steps.size() + 1, line, finder, known));
        }
        if (!steps.isEmpty()) {
            finder.unused()
                    .forEach(line ->
                            note(line.line(), "\"%s\" is listed but the method never uses it.".formatted(line.text())));
        }
        return List.copyOf(steps);
    }

    /** The yield may stand in the method too; an oven of the head counts only where no step states one. */
    private List<Setting> withYield(List<Setting> settings, List<Step> steps) {
        List<Setting> whole = new ArrayList<>(settings);
        boolean stepsHeat =
                steps.stream().anyMatch(step -> step.settings().stream().anyMatch(RecipeParser::isOven));
        whole.removeIf(setting -> stepsHeat && isOven(setting));
        if (whole.stream().noneMatch(setting -> setting.kind() == Setting.Kind.YIELD)) {
            Optional<Setting> inMethod = steps.stream()
                    .flatMap(step -> YieldReader.read(step.text(), step.number(), step.line()).stream())
                    .findFirst();
            inMethod.ifPresentOrElse(
                    whole::add,
                    () -> note(0, "no yield was found; say what it makes, such as \"Makes 12 buns\" or \"Serves 8\"."));
        }
        return List.copyOf(whole);
    }

    private static boolean isOven(Setting setting) {
        return setting.kind() == Setting.Kind.OVEN_TEMPERATURE;
    }

    private void note(int line, String sentence) {
        notes.add(new Note(Place.of(source, line), sentence));
    }
}
