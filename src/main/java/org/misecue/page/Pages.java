package org.misecue.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Fills the templates, which are compiled with the program. */
public final class Pages {

    private Pages() {}

    /**
     * @param template its path under {@code src/main/jte}, such as {@code "prep/sheet.jte"}
     * @param values the template's parameters by name
     * @return an HTML page that is also well-formed XML, so that {@link Pdf} can print it
     */
    public static String fill(String template, Map<String, Object> values) {
        StringOutput out = new StringOutput();
        Engine.INSTANCE.render(template, values, out);
        return out.toString();
    }

    /** Made on first use: most commands print no page. */
    private static final class Engine {
        static final TemplateEngine INSTANCE = TemplateEngine.createPrecompiled(ContentType.Html);
    }
}
