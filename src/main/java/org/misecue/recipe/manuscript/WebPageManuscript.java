package org.misecue.recipe.manuscript;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** A web page: its schema.org recipe where it carries one, else what it shows. */
final class WebPageManuscript implements ManuscriptReader {

    /** Rich pages have some thousand; each takes a kilobyte of memory. */
    private static final int MOST_TAGS = 50_000;

    @Override
    public boolean takes(String type) {
        return type.equals("text/html") || type.equals("application/xhtml+xml");
    }

    @Override
    public Manuscript read(Document document) {
        String html = document.text();
        if (html.chars().filter(each -> each == '<').count() > MOST_TAGS) {
            throw document.tooLong();
        }
        return read(parsed(html));
    }

    static Manuscript read(org.jsoup.nodes.Document page) {
        return SchemaRecipe.in(page).or(() -> Microdata.in(page)).orElseGet(() -> shown(Clutter.content(page)));
    }

    /** Places are for the notes only, and the parser loses its way where it keeps them in tags that close nothing. */
    static org.jsoup.nodes.Document parsed(String html) {
        try {
            return Jsoup.parse(html, "", Parser.htmlParser().setTrackPosition(true));
        } catch (NullPointerException e) {
            return Jsoup.parse(html);
        }
    }

    /** The lines that a body of HTML shows. */
    static Manuscript shown(Element body) {
        List<Line> lines = new ArrayList<>();
        new ShownLines(lines).walk(body);
        return new Manuscript("", lines);
    }
}
