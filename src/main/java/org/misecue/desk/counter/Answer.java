package org.misecue.desk.counter;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;
import org.misecue.page.Pages;

/** Gives pages and pieces of them. */
public final class Answer {

    private static final String HTML = "text/html; charset=utf-8";

    private Answer() {}

    /**
     * A whole page.
     *
     * @param template under {@code src/main/jte}; it has a parameter {@code view} and hands it to {@code desk/layout.jte}
     * @param values its other parameters
     */
    public static void page(Context request, View view, String template, Map<String, Object> values) {
        Map<String, Object> all = new HashMap<>(values);
        all.put("view", view);
        piece(request, template, all);
    }

    /** A piece of a page, to be put in the place of an older one. */
    public static void piece(Context request, String template, Map<String, Object> values) {
        request.contentType(HTML).result(Pages.fill(template, values));
    }

    /** A sentence in place of a page, or on it where a piece was asked for. */
    public static void sentence(Context request, int status, String sentence) {
        request.status(status);
        if (isPiece(request)) {
            // What stands on the page stays; the sentence goes where pages say things.
            request.header("HX-Retarget", "#said").header("HX-Reswap", "innerHTML");
            piece(request, "desk/sentence.jte", Map.of("sentence", sentence));
        } else {
            page(request, View.of(request, "misecue"), "desk/alone.jte", Map.of("sentence", sentence));
        }
    }

    /** Whether a page asks for a piece of itself. */
    public static boolean isPiece(Context request) {
        return request.header("HX-Request") != null;
    }
}
