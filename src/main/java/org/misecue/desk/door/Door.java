package org.misecue.desk.door;

import io.javalin.Javalin;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Looks at every request before anybody else does.
 *
 * <p>A page from elsewhere that the same browser shows must neither read nor change anything here: the name that the request
 * is meant for must be one of the desk's own (a foreign name may be made to lead to this machine), it must come from one of
 * the desk's own pages, and it must bring a key in a cookie that browsers send to nobody else.
 */
public final class Door {

    /** Where the address that was printed leads. */
    private static final String ENTRY = "/";

    /** A filming day; a phone that sleeps in between stays in. */
    private static final int GUEST_SECONDS = 16 * 60 * 60;

    private static final String KEY = "key";

    private static final String RULES =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
                    + "media-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final Keys keys;
    private final Supplier<Set<String>> names;

    /** @param names that the desk goes by, each with its port: {@code 127.0.0.1:4000} */
    public Door(Keys keys, Supplier<Set<String>> names) {
        this.keys = keys;
        this.names = names;
    }

    /** Stands at the door of this server. */
    public void guard(Javalin server) {
        server.before(this::look);
        server.beforeMatched(this::let);
    }

    private void look(Context request) {
        request.header("Content-Security-Policy", RULES);
        request.header("X-Content-Type-Options", "nosniff");
        // With "no-referrer" browsers would hide even from the desk that a form is its own.
        request.header("Referrer-Policy", "same-origin");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        request.header("Cross-Origin-Opener-Policy", "same-origin");
        request.header("Cache-Control", "no-store");
        String host = Optional.ofNullable(request.header("Host")).orElse("").toLowerCase(Locale.ROOT);
        if (!names.get().contains(host)) {
            throw new Refusal(
                    421, "This desk does not go by the name in the address; open the one that misecue printed.");
        }
        checkOrigin(request, host);
        recognise(request).remember(request);
    }

    /** A browser says from where a change comes; whoever does not say it changes nothing. */
    private static void checkOrigin(Context request, String host) {
        Optional<String> origin = Optional.ofNullable(request.header("Origin"));
        boolean own =
                origin.filter(from -> from.equalsIgnoreCase("http://" + host)).isPresent();
        boolean reads = request.method() == HandlerType.GET || request.method() == HandlerType.HEAD;
        if (!own && (origin.isPresent() || !reads)) {
            throw new Refusal(403, "Only the desk's own pages may change anything here.");
        }
        String site = request.header("Sec-Fetch-Site");
        if (site != null && !Set.of("same-origin", "none").contains(site) && !isEntry(request)) {
            throw new Refusal(403, "Another page asked for this, and the desk answers only its own.");
        }
    }

    private static boolean isEntry(Context request) {
        return request.path().equals(ENTRY) && request.queryParam(KEY) != null;
    }

    private Who recognise(Context request) {
        return Optional.ofNullable(request.cookie(cookie(request)))
                .map(keys::holder)
                .orElse(Who.PASSER_BY);
    }

    /** Serves the address that was printed, and keeps out whoever may not see what the address shows. */
    private void let(Context request) {
        String key = isEntry(request) ? request.queryParam(KEY) : null;
        if (key != null) {
            if (keys.holder(key) == Who.OWNER) {
                give(request, key, -1);
                request.redirect(ENTRY, io.javalin.http.HttpStatus.SEE_OTHER);
                request.skipRemainingHandlers();
                return;
            }
            throw new Refusal(
                    403, "This key opens another desk, or one that was closed; open the address that misecue printed.");
        }
        Who who = Who.of(request);
        boolean may = request.routeRoles().isEmpty()
                ? who == Who.OWNER
                : request.routeRoles().stream().anyMatch(who::mayPass);
        if (!may) {
            throw new Refusal(
                    403,
                    who == Who.GUEST
                            ? "This is for whoever opened the desk; guests see the bowls and the day."
                            : "This desk is locked; open the address that misecue printed.");
        }
    }

    /**
     * Lets a guest in who knows the code.
     *
     * @return whether that was the code
     */
    public boolean admit(Context request, String code) {
        Optional<String> key = keys.admit(code);
        key.ifPresent(one -> give(request, one, GUEST_SECONDS));
        return key.isPresent();
    }

    private static void give(Context request, String key, int seconds) {
        Cookie cookie = new Cookie(cookie(request), key);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        cookie.setMaxAge(seconds);
        request.cookie(cookie);
    }

    /** Browsers keep cookies by host and not by port, and two desks may be open. */
    private static String cookie(Context request) {
        return "misecue-" + request.req().getLocalPort();
    }
}
