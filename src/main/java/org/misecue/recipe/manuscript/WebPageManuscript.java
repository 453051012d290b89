package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A web page: its schema.org recipe where it carries one, else what it shows. */
final class WebPageManuscript implements ManuscriptReader {

    @Override
    public boolean takes(String type) {
        return type.equals("text/html") || type.equals("application/xhtml+xml");
    }

    @Override
    public Manuscript read(Document document) {
        org.jsoup.nodes.Document page =
                org.jsoup.Jsoup.parse(document.text(), "", Parser.htmlParser().setTrackPosition(true));
        return SchemaRecipe.in(page).or(() -> Microdata.in(page)).orElseGet(() -> shown(Clutter.content(page)));
    }

    /** The lines that a body of HTML shows. */
    static Manuscript shown(Element body) {
        List<Line> lines = new ArrayList<>();
        new ShownLines(lines).walk(body);
        return new Manuscript("", lines);
    }
}
