package org.misecue.publish;

import com.samskivert.mustache.BasicCollector;
import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * A text with names in it. It can name what {@link TemplateNames} lists and nothing else: no method is called, no file
 * read, nothing included.
 */
final class Template {

    private static final long LONGEST = 1_000_000;

    private final String file;
    private final String text;
    private final com.samskivert.mustache.Template compiled;

    private Template(String file, String text, com.samskivert.mustache.Template compiled) {
        this.file = file;
        this.text = text;
        this.compiled = compiled;
    }

    /**
     * @param file how the person knows it; whatever a template named *.html fills in is escaped for HTML
     * @throws BadInput with line where the template is wrong
     */
    static Template of(String file, String text) {
        TemplateCheck.check(file, text);
        try {
            return new Template(
                    file,
                    text,
                    Mustache.compiler()
                            .withEscaper(file.endsWith(".html") ? Escapers.HTML : Escapers.NONE)
                            .emptyStringIsFalse(true)
                            .strictSections(true)
                            .withCollector(new NamesOnly())
                            .compile(text));
        } catch (MustacheException e) {
            throw unreadable(file, e);
        }
    }

    private static BadInput unreadable(String file, MustacheException e) {
        return new BadInput(
                Place.of(file), "the template cannot be read; compare it with the one in the guide to templates.", e);
    }

    /** @throws BadInput if it makes an endless text */
    String fill(Map<String, Object> names) {
        try {
            String filled = compiled.execute(names);
            if (filled.length() > LONGEST) {
                throw new BadInput(
                        Place.of(file), "the template makes a text of over a million characters; shorten it.");
            }
            return filled;
        } catch (MustacheException e) {
            throw unreadable(file, e);
        }
    }

    /** Whether it has anything to say of a name. */
    boolean names(String name) {
        return text.matches("(?s).*\\{\\{[#^]?\\s*" + name + "\\s*}}.*");
    }

    String file() {
        return file;
    }

    /** Looks into maps of ours and into nothing else. */
    private static final class NamesOnly extends BasicCollector {

        @Override
        public Mustache.VariableFetcher createFetcher(Object from, String name) {
            return from instanceof Map
                    ? (map, key) -> {
                        Object value = ((Map<?, ?>) map).get(key);
                        return value == null ? com.samskivert.mustache.Template.NO_FETCHER_FOUND : value;
                    }
                    : (other, key) -> com.samskivert.mustache.Template.NO_FETCHER_FOUND;
        }

        @Override
        public <K, V> Map<K, V> createFetcherCache() {
            return new ConcurrentHashMap<>();
        }
    }
}
