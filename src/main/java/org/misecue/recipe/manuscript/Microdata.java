package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/** The schema.org Recipe that a web page may mark in its text: itemprop name, recipeYield, recipeIngredient. */
final class Microdata {

    private static final String INGREDIENT = "[itemprop~=(?i)\\b(recipeIngredient|ingredients?)\\b]";
    private static final String METHOD = "[itemprop~=(?i)\\brecipeInstructions\\b]";

    private static final Pattern TYPE = Pattern.compile("schema\\.org/Recipe$", Pattern.CASE_INSENSITIVE);

    private Microdata() {}

    static Optional<Manuscript> in(Document page) {
        for (Element recipe : page.getElementsByAttribute("itemtype")) {
            if (TYPE.matcher(recipe.attr("itemtype")).find() && recipe.selectFirst(INGREDIENT) != null) {
                return Optional.of(manuscript(recipe));
            }
        }
        return Optional.empty();
    }

    private static Manuscript manuscript(Element recipe) {
        List<Line> lines = new ArrayList<>();
        Element makes = recipe.selectFirst("[itemprop=recipeYield]");
        if (makes != null && !said(makes).isEmpty()) {
            lines.add(Line.text(ShownLines.lineOf(makes), "Yield: " + said(makes), true));
        }
        lines.add(Line.heading(0, 2, "Ingredients"));
        for (Element ingredient : recipe.select(INGREDIENT)) {
            addIngredient(lines, ingredient);
        }
        lines.add(Line.heading(0, 2, "Method"));
        for (Element method : recipe.select(METHOD)) {
            addMethod(lines, method);
        }
        return new Manuscript(name(recipe), lines);
    }

    private static void addIngredient(List<Line> lines, Element ingredient) {
        Elements items = ingredient.select("li");
        for (Element each : items.isEmpty() ? new Elements(ingredient) : items) {
            if (!said(each).isEmpty()) {
                lines.add(Line.item(ShownLines.lineOf(each), said(each)));
            }
        }
    }

    /** Each step is marked itself, or the whole method is one mark around a list or paragraphs. */
    private static void addMethod(List<Line> lines, Element method) {
        List<Line> shown = new ArrayList<>();
        new ShownLines(shown).walk(method);
        for (Line line : shown) {
            lines.add(line.is(Line.Kind.HEADING) ? line : Line.numbered(line.number(), line.text()));
        }
    }

    /** The name of the recipe, not of its writer or of a step. */
    private static String name(Element recipe) {
        return recipe.select("[itemprop=name]").stream()
                .filter(name -> name.parents().stream()
                        .filter(parent -> parent.hasAttr("itemscope"))
                        .findFirst()
                        .filter(recipe::equals)
                        .isPresent())
                .map(Microdata::said)
                .findFirst()
                .orElse("");
    }

    private static String said(Element element) {
        String content = element.attr("content");
        return (content.isBlank() ? element.text() : content).strip();
    }
}
