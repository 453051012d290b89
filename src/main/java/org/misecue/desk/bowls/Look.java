package org.misecue.desk.bowls;

import static java.nio.charset.StandardCharsets.UTF_8;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.util.Optional;

/**
 * What one device wants to see; it stands in the page's address.
 *
 * @param leftOnly only what has no tick yet
 * @param last the key of what this device ticked last; empty for nothing
 */
public record Look(boolean leftOnly, String last) {

    static Look of(Context request) {
        return new Look("1".equals(param(request, "left")), param(request, "last"));
    }

    /** Of the form that was sent, or else of the address: whoever asks for a body where none is sent waits for nothing. */
    private static String param(Context request, String name) {
        boolean sent = request.method() == HandlerType.POST;
        return Optional.ofNullable(sent ? request.formParam(name) : request.queryParam(name))
                .orElse("");
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
