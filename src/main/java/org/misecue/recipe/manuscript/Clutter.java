package org.misecue.recipe.manuscript;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Evaluator;
import org.jsoup.select.QueryParser;

/** What stands around a recipe on a web page and is none of it: menus, comments, advertisements, questions on cookies. */
final class Clutter {

    private static final Pattern NAMES = Pattern.compile(
            "(?:^|[\\s_-])(?:comments?|respond|cookies?|consent|gdpr|adsbygoogle|adverts?|advertisement|ads?|sponsor(?:ed)?|newsletter"
                    + "|subscribe|sidebar|related|share|sharing|social|breadcrumbs?|navigation|navbar|nav|popup|modal|promo|skip-link)"
                    + "(?:$|[\\s_-])",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ROLES =
            Pattern.compile("navigation|dialog|alertdialog|complementary|search|contentinfo");
    private static final Pattern HIDDEN = Pattern.compile("display\\s*:\\s*none|visibility\\s*:\\s*hidden");
    /** A page's own head and foot may be long; the recipe is longer than this. */
    private static final int SHORTEST_RECIPE = 150;

    private static final Evaluator MAIN = QueryParser.parse("main, [role=main]");
    private static final Evaluator ARTICLE = QueryParser.parse("article");

    private Clutter() {}

    static boolean is(Element element) {
        return element.attributesSize() > 0
                && (NAMES.matcher(element.className()).find()
                        || NAMES.matcher(element.id()).find()
                        || ROLES.matcher(element.attr("role")).matches()
                        || element.hasAttr("hidden")
                        || HIDDEN.matcher(element.attr("style")).find());
    }

    /** The part of the page that holds its matter: main, else the longest article, else all of it. */
    static Element content(Document page) {
        Optional<Element> main = longest(page, MAIN);
        return main.or(() -> longest(page, ARTICLE)).orElse(page.body());
    }

    private static Optional<Element> longest(Document page, Evaluator query) {
        return page.select(query).stream()
                .filter(element ->
                        element.text().length() > SHORTEST_RECIPE && element.selectFirst("li, p, table, br") != null)
                .max(Comparator.comparingInt(element -> element.text().length()));
    }
}
