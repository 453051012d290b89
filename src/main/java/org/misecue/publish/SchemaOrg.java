package org.misecue.publish;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.List;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/**
 * The published batch as a schema.org Recipe in JSON-LD, for a page's {@code <script type="application/ld+json">}.
 * Angle brackets and ampersands are written as escapes, so that no text of a recipe can end that element.
 */
public final class SchemaOrg {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> COOKING = List.of("bake", "boil", "simmer", "fry", "caramelise", "temper");

    private SchemaOrg() {}

    /** The document, indented, ended by a line feed. */
    public static String json(ScaledRecipe published) {
        Recipe recipe = published.recipe();
        ObjectNode document = NODES.objectNode();
        document.put("@context", "https://schema.org");
        document.put("@type", "Recipe");
        document.put("name", SafeText.line(recipe.title()));
        FigureText figures = new FigureText(published);
        figures.yield().ifPresent(yield -> document.put("recipeYield", yield));
        times(document, recipe);
        ArrayNode tools = tools(recipe);
        if (!tools.isEmpty()) {
            document.set("tool", tools);
        }
        document.set("recipeIngredient", ingredients(published));
        document.set("recipeInstructions", instructions(recipe));
        return written(document);
    }

    private static void times(ObjectNode document, Recipe recipe) {
        Duration total = Duration.ZERO;
        Duration cooking = Duration.ZERO;
        for (Step step : recipe.steps()) {
            total = total.plus(step.handsOn()).plus(step.unattended());
            if (step.techniques().stream().anyMatch(COOKING::contains)) {
                cooking = cooking.plus(step.unattended());
            }
        }
        put(document, "prepTime", total.minus(cooking));
        put(document, "cookTime", cooking);
        put(document, "totalTime", total);
    }

    private static void put(ObjectNode document, String key, Duration time) {
        if (!time.isZero()) {
            document.put(key, time.toString());
        }
    }

    private static ArrayNode tools(Recipe recipe) {
        ArrayNode tools = NODES.arrayNode();
        recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .map(FigureText::tin)
                .distinct()
                .forEach(tin -> tools.addObject().put("@type", "HowToTool").put("name", tin));
        return tools;
    }

    private static ArrayNode ingredients(ScaledRecipe published) {
        ArrayNode lines = NODES.arrayNode();
        for (WeighedLine line : published.lines()) {
            lines.add(IngredientText.plain(line));
        }
        return lines;
    }

    private static ArrayNode instructions(Recipe recipe) {
        ArrayNode steps = NODES.arrayNode();
        for (Step step : recipe.steps()) {
            steps.addObject()
                    .put("@type", "HowToStep")
                    .put("position", step.number())
                    .put("name", ChapterTitle.of(step.text()))
                    .put("text", SafeText.line(step.text()));
        }
        return steps;
    }

    private static String written(ObjectNode document) {
        try {
            String json = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(document);
            return json.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026") + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of text cannot fail to be written", e);
        }
    }
}
