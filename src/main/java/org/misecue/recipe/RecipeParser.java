package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.manuscript.Line;
import org.misecue.recipe.manuscript.Manuscript;

/** Makes a recipe of a manuscript, with what the checks note on it. */
final class RecipeParser {

    private final String source;
    private final Larder larder;
    private final IngredientLineParser lineParser;

    RecipeParser(String source, Pantry pantry) {
        this.source = source;
        this.larder = new Larder(pantry);
        this.lineParser = new IngredientLineParser(pantry);
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
        Recipe bare = new Recipe(title(outline), components, steps, withYield(settings, steps), List.of(), source);
        return bare.with(notes(bare));
    }

    /** In the order of the file; what concerns no single line stands last. */
    private List<Note> notes(Recipe recipe) {
        return RecipeCheck.ALL.stream()
                .flatMap(check -> check.notes(recipe, larder).stream())
                .sorted(Comparator.comparingInt(note -> note.place().line() == 0
                        ? Integer.MAX_VALUE
                        : note.place().line()))
                .toList();
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
                    part.name(), part.lines().stream().map(lineParser::parse).toList()));
        }
        return List.copyOf(components);
    }

    private static List<Setting> settings(Outline outline) {
        List<Setting> settings = new ArrayList<>();
        for (Line line : outline.head()) {
            Wording text = Wording.of(line.text());
            YieldReader.read(text, 0, line.number())
                    .filter(found -> settings.stream().noneMatch(each -> each.kind() == Setting.Kind.YIELD))
                    .ifPresent(settings::add);
            settings.addAll(TinReader.read(text, 0, line.number()));
            settings.addAll(OvenReader.read(text, 0, line.number()));
        }
        return settings;
    }

    private List<Step> steps(Outline outline, List<Component> components, List<Setting> known) {
        UseFinder finder = new UseFinder(components, larder);
        List<Step> steps = new ArrayList<>();
        for (Outline.MethodLine line : outline.method()) {
            steps.add(StepParser.parse(steps.size() + 1, line, finder, known, larder));
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
            steps.stream()
                    .flatMap(step -> YieldReader.read(larder.wording(step.text()), step.number(), step.line()).stream())
                    .findFirst()
                    .ifPresent(whole::add);
        }
        return List.copyOf(whole);
    }

    private static boolean isOven(Setting setting) {
        return setting.kind() == Setting.Kind.OVEN_TEMPERATURE;
    }
}
