package org.misecue.desk.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.misecue.desk.OpenDesk;

/** Somebody who works on the producer's page by requests alone. */
public final class CheckClient {

    private static final String[] PIECE = {"HX-Request", "true"};

    private final OpenDesk desk;
    private final String base;

    public CheckClient(OpenDesk desk, Path folder) {
        this.desk = desk;
        this.base = "/e/" + folder.getFileName() + "/";
    }

    /** The page once everything is worked out. */
    public Document page(String path) {
        Document page = Jsoup.parse(get(path).body());
        for (int tries = 0; page.selectFirst(".waiting") != null && tries < 400; tries++) {
            pause();
            page = Jsoup.parse(get(path).body());
        }
        assertThat(page.selectFirst("#sheet"))
                .as("what the page shows: " + page.text())
                .isNotNull();
        return page;
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    public HttpResponse<String> get(String path) {
        return desk.get(base + path);
    }

    public HttpResponse<String> piece(String path) {
        return desk.get(base + path, PIECE);
    }

    /** The row whose heading begins so. */
    public static Element row(Document page, String what) {
        return page.select("article.verdict").stream()
                .filter(row -> row.selectFirst("h3").text().startsWith(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row on " + what + " in " + page.text()));
    }

    /** What a row's form would send. */
    public static Map<String, String> form(Element row, String choice) {
        Map<String, String> form = hidden(row.selectFirst("form.decide"));
        form.put("choice", choice);
        form.put("by", "Nell");
        return form;
    }

    public static Map<String, String> hidden(Element form) {
        Map<String, String> values = new LinkedHashMap<>();
        form.select("input[type=hidden]").forEach(field -> values.put(field.attr("name"), field.attr("value")));
        return values;
    }

    public HttpResponse<String> decide(Map<String, String> form) {
        return post("check/decide", form);
    }

    public HttpResponse<String> post(String path, Map<String, String> form) {
        return desk.post(base + path, form, PIECE);
    }
}
