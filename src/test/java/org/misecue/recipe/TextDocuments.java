package org.misecue.recipe;

import java.util.List;
import java.util.stream.Collectors;

/** The oat slice as Markdown, as text from a mail, and as web pages. */
final class TextDocuments {

    private TextDocuments() {}

    static String markdown(String bullet) {
        return "# " + OatSlice.TITLE + "\n\n" + OatSlice.MAKES + "\n\n## Ingredients\n\n### For the base\n\n"
                + each(OatSlice.BASE, bullet, "\n") + "\n### For the icing\n\n" + each(OatSlice.ICING, bullet, "\n")
                + "\n## Method\n\n" + each(OatSlice.STEPS, "1. ", "\n");
    }

    static String markdownTables() {
        return "# " + OatSlice.TITLE + "\n\n" + OatSlice.MAKES + "\n\n## Ingredients\n\n### For the base\n\n"
                + pipes(OatSlice.BASE) + "\n### For the icing\n\n" + pipes(OatSlice.ICING) + "\n## Method\n\n"
                + each(OatSlice.STEPS, "", "\n\n");
    }

    private static String pipes(List<String> lines) {
        return "| Amount | Ingredient |\n|-------:|:-----------|\n"
                + lines.stream()
                        .map(line -> "| " + String.join(" | ", OatSlice.cells(line)) + " |\n")
                        .collect(Collectors.joining());
    }

    /** Bold words for headings, no list at all. */
    static String boldMarkdown() {
        return "**" + OatSlice.TITLE + "**\n\n" + OatSlice.MAKES + "\n\n**Ingredients**\n\n**For the base:**\n"
                + each(OatSlice.BASE, "", "\n") + "\n**For the icing:**\n" + each(OatSlice.ICING, "", "\n")
                + "\n**Method**\n\n" + each(OatSlice.STEPS, "", "\n\n");
    }

    static String text() {
        return OatSlice.TITLE + "\n\n" + OatSlice.MAKES + "\n\nIngredients\n\nFor the base:\n"
                + each(OatSlice.BASE, "", "\n") + "\nFor the icing:\n" + each(OatSlice.ICING, "", "\n")
                + "\nMETHOD\n\n" + each(OatSlice.STEPS, "", "\n\n");
    }

    /** Names before amounts, in two measures. */
    static String nameFirst() {
        return "# Buns\n\nMakes 12\n\n## Ingredients\n\n| Ingredient | Metric | Cups |\n|---|---|---|\n| plain flour | 200 g |"
                + " 1½ cups |\n| salt | | a pinch |\n\n## Method\n\nMix the flour and salt.\n";
    }

    /** The sugar stands on line 9 and has an amount that cannot be right. */
    static String tableWithOddRow(boolean html) {
        String markdown =
                "# Buns\n\n## Ingredients\n\n| Amount | Ingredient |\n|---|---|\n| 200 g | flour |\n| 80 g | butter |\n"
                        + "| 0 g | sugar |\n\n## Method\n\nMix the flour, butter and sugar.\n";
        return html
                ? "<html><body>\n<h1>Buns</h1>\n<h2>Ingredients</h2>\n<table>\n<tr><th>Amount</th><th>Ingredient</th></tr>\n"
                        + "<tr><td>200 g</td><td>flour</td></tr>\n<tr><td>80 g</td><td>butter</td></tr>\n\n"
                        + "<tr><td>0 g</td><td>sugar</td></tr>\n</table><h2>Method</h2><p>Mix the flour, butter and sugar.</p></body></html>"
                : markdown;
    }

    /** No headings, lines broken after about seventy letters, a name below. */
    static String bareMail() {
        return "Hi,\n\nthat cake you liked:\n\nLemon drizzle cake\nserves 8\n\n225g unsalted butter, softened - take it out of the"
                + " fridge the night\nbefore\n225g caster sugar\n4 eggs\n\nHeat oven to 180C/fan 160C/gas 4. Beat together the"
                + " butter and caster\nsugar until pale and creamy, then add the eggs one at a time.\n\nBake for 45-50"
                + " mins.\n\nlove\nAnn\n\nSent from my phone\n";
    }

    /** Quoted, broken after 60 characters, greeted and signed. */
    static String mail() {
        String said = "Hi Jo,\n\nhere it is.\n\n" + text();
        String quoted = said.lines()
                .flatMap(line -> OtherDocuments.wrapped(line, 60).stream())
                .map(line -> "> " + line + "\n")
                .collect(Collectors.joining());
        return "From: Sam Ashe <sam@example.org>\nSubject: Re: " + OatSlice.TITLE
                + "\n\nOn 3 May 2024, Sam Ashe wrote:\n\n" + quoted + "\n-- \nJo Lindt\n12 Mill Lane\n";
    }

    static String jsonLd(String type, boolean graph) {
        String recipe = "{\"@type\":" + type
                + ",\"name\":\"Plum &amp; oat slice\",\"author\":{\"@type\":\"Person\",\"name\":\"Jo\"},"
                + "\"recipeYield\":[\"12\",\"12 slices\"],\"recipeIngredient\":[" + "\"For the base:\","
                + quoted(OatSlice.BASE).replace("¼", "&frac14;") + ",\"For the icing:\"," + quoted(OatSlice.ICING)
                + "],\"recipeInstructions\":[{\"@type\":\"HowToSection\",\"name\":\"Method\",\"itemListElement\":["
                + OatSlice.STEPS.stream()
                        .map(step -> "{\"@type\":\"HowToStep\",\"text\":\"<p>" + step.replace("°", "&deg;") + "</p>\"}")
                        .collect(Collectors.joining(","))
                + "]}]}";
        String data = graph
                ? "{\"@context\":\"https://schema.org\",\"@graph\":[{\"@type\":\"WebSite\"}," + recipe + "]}"
                : "[" + recipe + "]";
        return "<html><head><script type=\"application/ld+json\">{\"@type\":\"Organization\"</script>\n"
                + "<script type='application/ld+json'>{\"@type\":\"BreadcrumbList\"}</script>\n"
                + "<script type=\"application/ld+json\">\n//<![CDATA[\n" + data + "\n//]]>\n</script></head>"
                + "<body><h1>Something else</h1><p>Buy 1 kg of coffee.</p></body></html>";
    }

    private static String quoted(List<String> lines) {
        return lines.stream().map(line -> "\"" + line + "\"").collect(Collectors.joining(","));
    }

    static String microdata() {
        return "<html><body><div itemscope itemtype=\"http://schema.org/Recipe\"><h1 itemprop=\"name\">"
                + OatSlice.TITLE
                + "</h1><div itemprop=\"author\" itemscope><b itemprop=\"name\">Jo</b></div>"
                + "<p>Yield <span itemprop=\"recipeYield\">12 slices</span></p><ul>"
                + "<li itemprop=\"recipeIngredient\">For the base:</li>"
                + each(OatSlice.BASE, "<li itemprop=\"recipeIngredient\">", "</li>")
                + "<li itemprop=\"recipeIngredient\">For the icing:</li>"
                + each(OatSlice.ICING, "<li itemprop=\"recipeIngredient\">", "</li>")
                + "</ul><ol itemprop=\"recipeInstructions\">" + each(OatSlice.STEPS, "<li>", "</li>")
                + "</ol></div></body></html>";
    }

    /** Without data for machines, and with all that stands around a recipe. */
    static String page() {
        return "<html><body><header><nav><ul><li>Home</li><li>2 cups of tea</li></ul></nav></header>"
                + "<div id=\"cookie-banner\"><p>We use cookies.</p><button>Yes</button></div><main><h1>"
                + OatSlice.TITLE
                + "</h1><div class=\"share-buttons\"><ul><li>Post</li></ul></div><p>" + OatSlice.MAKES
                + "</p><h2>Ingredients</h2><h3>For the base</h3><ul>" + each(OatSlice.BASE, "<li>", "</li>")
                + "</ul><div class=\"ad\"><p>100 g of gold, now half price</p></div><h3>For the icing</h3><ul>"
                + each(OatSlice.ICING, "<li><label><input type=checkbox> ", "</label></li>")
                + "</ul><h2>Method</h2><ol>"
                + each(OatSlice.STEPS, "<li><p>", "</p></li>") + "</ol><section id=\"comments\"><h2>Comments</h2>"
                + "<p>I used 300 g of butter and it was a mess.</p></section></main><footer>Imprint</footer></body></html>";
    }

    private static String each(List<String> lines, String before, String after) {
        return lines.stream().map(line -> before + line + after).collect(Collectors.joining());
    }
}
