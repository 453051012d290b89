package org.misecue.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;
import java.util.regex.Pattern;

/** Fills the templates, which are compiled with the program. */
public final class Pages {

    private static final Pattern NOT_XML =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    private Pages() {}

    /**
     * @param template its path under {@code src/main/jte}, such as {@code "prep/sheet.jte"}
     * @param values the template's parameters by name
     * @return an HTML page that is also well-formed XML, so that {@link Pdf} can print it
     */
    public static String fill(String template, Map<String, Object> values) {
        StringOutput out = new StringOutput();
        Engine.INSTANCE.render(template, values, out);
        return withoutControls(out.toString());
    }

    /** Made on first use: most commands print no page. */
    private static final class Engine {
        static final TemplateEngine INSTANCE = TemplateEngine.createPrecompiled(ContentType.Html);
    }

    /** Without the characters that no XML may hold; they mean nothing on a page. */
    static String withoutControls(String page) {
        return NOT_XML.matcher(page).replaceAll("");
    }
}
