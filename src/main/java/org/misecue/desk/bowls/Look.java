package org.misecue.desk.bowls;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import java.net.URLEncoder;
import org.misecue.desk.counter.Fields;

/**
 * What one device wants to see; it stands in the page's address.
 *
 * @param leftOnly only what has no tick yet
 * @param last the key of what this device ticked last; empty for nothing
 */
public record Look(boolean leftOnly, String last) {

    static Look of(Context request) {
        return new Look("1".equals(Fields.sentOrAsked(request, "left")), Fields.sentOrAsked(request, "last"));
    }

    Look withLast(String key) {
        return new Look(leftOnly, key);
    }

    /** The same, seeing all or only what is left. */
    public Look turned() {
        return new Look(!leftOnly, last);
    }

    /** "?left=1&last=…"; empty for what everybody sees at first. */
    public String query() {
        String left = leftOnly ? "&left=1" : "";
        String latest = last.isEmpty() ? "" : "&last=" + URLEncoder.encode(last, UTF_8);
        return (left + latest).replaceFirst("&", "?");
    }
}
