package org.misecue.publish;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/**
 * The published batch as a schema.org Recipe in JSON-LD, with its film where one is known, for a page's
 * {@code <script type="application/ld+json">}. What nobody has said is left out. Angle brackets, ampersands and the line
 * separators of Unicode are written as escapes, so that no text can end that element.
 */
public final class SchemaOrg {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> COOKING = List.of("bake", "boil", "simmer", "fry", "caramelise", "temper");

    private final Edition edition;
    private final Recipe recipe;
    private final WebData web;

    private SchemaOrg(Edition edition) {
        this.edition = edition;
        this.recipe = edition.recipe();
        this.web = edition.web();
    }

    /** The document, indented, ended by a line feed. */
    public static String json(Edition edition) {
        return written(new SchemaOrg(edition).document());
    }

    private ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        document.put("@context", "https://schema.org");
        document.put("@type", "Recipe");
        document.put("name", SafeText.line(recipe.title()));
        edition.draft().ifPresent(why -> document.put("creativeWorkStatus", "Draft"));
        text(document, "description", web.summary());
        document.put("inLanguage", web.language().toLanguageTag());
        url(document, "url", web.page());
        url(document, "image", web.picture());
        named(document, "author", "Person", web.author());
        named(document, "publisher", "Organization", web.publisher());
        web.date().ifPresent(day -> document.put("datePublished", day.toString()));
        text(document, "recipeYield", FigureText.yield(edition.batch()));
        times(document);
        ArrayNode tools = tools();
        if (!tools.isEmpty()) {
            document.set("tool", tools);
        }
        document.set("recipeIngredient", ingredients(edition.batch()));
        document.set("recipeInstructions", instructions());
        FilmData.of(edition).ifPresent(film -> document.set("video", film));
        return document;
    }

    private void times(ObjectNode document) {
        Duration total = Duration.ZERO;
        Duration cooking = Duration.ZERO;
        for (Step step : recipe.steps()) {
            total = total.plus(step.handsOn()).plus(step.unattended());
            if (step.techniques().stream().anyMatch(COOKING::contains)) {
                cooking = cooking.plus(step.unattended());
            }
        }
        time(document, "prepTime", total.minus(cooking));
        time(document, "cookTime", cooking);
        time(document, "totalTime", total);
    }

    private static void time(ObjectNode document, String key, Duration time) {
        if (!time.isZero()) {
            document.put(key, time.toString());
        }
    }

    private ArrayNode tools() {
        ArrayNode tools = NODES.arrayNode();
        recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .map(setting -> FigureText.tin(setting, Amounts.ENGLISH))
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

    private ArrayNode instructions() {
        ArrayNode all = NODES.arrayNode();
        for (MethodSections.Section section : MethodSections.of(recipe)) {
            ArrayNode steps = all;
            if (!section.part().isEmpty()) {
                steps = all.addObject()
                        .put("@type", "HowToSection")
                        .put("name", IngredientList.named(SafeText.line(section.part())))
                        .putArray("itemListElement");
            }
            for (Step step : section.steps()) {
                ObjectNode one = steps.addObject()
                        .put("@type", "HowToStep")
                        .put("position", step.number())
                        .put("name", ChapterTitle.of(step.text()))
                        .put("text", SafeText.line(step.text()));
                url(one, "url", web.page().map(page -> at(page, "step-" + step.number())));
            }
        }
        return all;
    }

    private static URI at(URI page, String place) {
        return URI.create(page.toString().replaceFirst("#.*$", "") + "#" + place);
    }

    static void text(ObjectNode node, String key, Optional<String> text) {
        text.map(SafeText::line).filter(line -> !line.isEmpty()).ifPresent(line -> node.put(key, line));
    }

    static void url(ObjectNode node, String key, Optional<URI> url) {
        url.ifPresent(known -> node.put(key, known.toASCIIString()));
    }

    private static void named(ObjectNode node, String key, String type, Optional<String> name) {
        name.map(SafeText::line)
                .filter(line -> !line.isEmpty())
                .ifPresent(line -> node.putObject(key).put("@type", type).put("name", line));
    }

    private static String written(ObjectNode document) {
        try {
            String json = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(document);
            return json.replace("<", "\\u003c")
                            .replace(">", "\\u003e")
                            .replace("&", "\\u0026")
                            .replace("\u2028", "\\u2028")
                            .replace("\u2029", "\\u2029")
                    + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of text cannot fail to be written", e);
        }
    }
}
