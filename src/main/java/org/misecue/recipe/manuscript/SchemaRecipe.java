package org.misecue.recipe.manuscript;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** The schema.org Recipe that a web page may carry as JSON-LD: name, recipeYield, recipeIngredient, recipeInstructions. */
final class SchemaRecipe {

    private static final int SECTION = 2;
    private static final int PART = 3;

    /** Pages break lines inside strings and leave commas behind; both can be read. */
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_UNESCAPED_CONTROL_CHARS, JsonReadFeature.ALLOW_TRAILING_COMMA)
            .build();

    /** What hid scripts from old browsers. */
    private static final Pattern WRAPPING = Pattern.compile(
            "^\\s*(?://|/\\*)?\\s*(?:<!\\[CDATA\\[|<!--)(?:\\s*\\*/)?|(?://|/\\*)?\\s*(?:]]>|-->)(?:\\s*\\*/)?\\s*;?\\s*$");

    private static final Pattern IS_RECIPE = Pattern.compile("\"(?:https?://schema\\.org/|schema:)?Recipe\"");
    private static final Pattern LINE_END = Pattern.compile("(?i)\\R|<br\\s*/?>|</(?:p|li|div)>");
    private static final Pattern ENTITY = Pattern.compile("&(?:#\\w+|\\w{2,8});");

    private final List<Line> lines = new ArrayList<>();

    private SchemaRecipe() {}

    static Optional<Manuscript> in(Document page) {
        for (Element script : page.getElementsByTag("script")) {
            if (!script.attr("type").toLowerCase(Locale.ROOT).contains("application/ld+json")) {
                continue;
            }
            Optional<JsonNode> recipe = parsed(script.data()).flatMap(json -> find(json, 0));
            if (recipe.isPresent()) {
                return Optional.of(new SchemaRecipe().manuscript(recipe.get()));
            }
        }
        return Optional.empty();
    }

    private static Optional<JsonNode> parsed(String json) {
        try {
            return Optional.ofNullable(JSON.readTree(WRAPPING.matcher(json).replaceAll("")));
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    private static Optional<JsonNode> find(JsonNode node, int depth) {
        if (depth > 8) {
            return Optional.empty();
        }
        if (node.isObject()
                && IS_RECIPE.matcher(node.path("@type").toString()).find()
                && (node.has("recipeIngredient") || node.has("ingredients"))) {
            return Optional.of(node);
        }
        for (JsonNode child : node) {
            Optional<JsonNode> found = find(child, depth + 1);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Manuscript manuscript(JsonNode recipe) {
        makes(recipe.has("recipeYield") ? recipe.path("recipeYield") : recipe.path("yield"));
        lines.add(Line.heading(0, SECTION, "Ingredients"));
        List<JsonNode> ingredients =
                list(recipe.has("recipeIngredient") ? recipe.path("recipeIngredient") : recipe.path("ingredients"));
        for (JsonNode ingredient : ingredients) {
            for (String line : written(ingredient, ingredients.size() == 1)) {
                words(line)
                        .ifPresent(text ->
                                lines.add(Line.item(0, Marks.line(0, text, true).text())));
            }
        }
        lines.add(Line.heading(0, SECTION, "Method"));
        for (JsonNode instruction : list(recipe.path("recipeInstructions"))) {
            instruction(instruction);
        }
        return new Manuscript(words(recipe.path("name")).orElse(""), lines);
    }

    /** One ingredient mostly; some pages write several into one string, on lines or behind commas. */
    private static List<String> written(JsonNode ingredient, boolean alone) {
        List<String> each = LINE_END.splitAsStream(ingredient.asText()).toList();
        List<String> listed = List.of(each.get(0).split(",\\s*(?=[\\d½¼¾⅓⅔⅛])", -1));
        boolean all = listed.stream().allMatch(line -> line.matches("\\s*[\\d½¼¾⅓⅔⅛].*\\p{L}{2,}.*"));
        return alone && each.size() == 1 && listed.size() > 2 && all ? listed : each;
    }

    private void makes(JsonNode yield) {
        for (JsonNode each : list(yield)) {
            Optional<String> text = words(each);
            // "12" alone stands beside "12 buns" in many pages; the one with words says more.
            if (text.isPresent()
                    && (text.get().matches(".*\\p{L}.*") || list(yield).size() == 1)) {
                lines.add(Line.text(0, "Yield: " + text.get(), true));
                return;
            }
        }
    }

    private void instruction(JsonNode node) {
        if (node.isTextual()) {
            Jsoup.parse(node.asText().replace("\n", "<br>"))
                    .body()
                    .html()
                    .lines()
                    .forEach(line -> words(line)
                            .map(text -> Marks.line(0, text, true).text())
                            .ifPresent(text -> lines.add(Line.numbered(0, text))));
            return;
        }
        if (node.path("item").isObject()) {
            instruction(node.path("item"));
            return;
        }
        if (!node.path("itemListElement").isEmpty()) {
            words(node.path("name")).ifPresent(name -> lines.add(Line.heading(0, PART, name)));
            for (JsonNode step : list(node.path("itemListElement"))) {
                instruction(step);
            }
            return;
        }
        words(node.path("text"))
                .or(() -> words(node.path("name")))
                .ifPresent(text -> lines.add(Line.numbered(0, text)));
    }

    private static List<JsonNode> list(JsonNode node) {
        List<JsonNode> nodes = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(nodes::add);
        } else if (!node.isMissingNode() && !node.isNull()) {
            nodes.add(node);
        }
        return nodes;
    }

    private static Optional<String> words(JsonNode node) {
        return node.isValueNode() && !node.isNull() ? words(node.asText()) : Optional.empty();
    }

    private static Optional<String> words(String html) {
        String text = Jsoup.parse(html).text().strip();
        // Some pages escape twice: "1&amp;frac12;".
        text = ENTITY.matcher(text).find() ? Jsoup.parse(text).text().strip() : text;
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
