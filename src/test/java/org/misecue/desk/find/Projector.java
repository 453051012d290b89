package org.misecue.desk.find;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Route;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Watches what a page asks of its films, and can say of one that the browser does not play it. */
final class Projector {

    /** What was taken, such as {@code still at=12.4}. */
    final List<String> taken = new CopyOnWriteArrayList<>();

    private final Page page;
    private boolean copied;

    private Projector(Page page) {
        this.page = page;
    }

    static Projector watching(Page page) {
        Projector projector = new Projector(page);
        page.onRequest(projector::note);
        return projector;
    }

    private void note(Request request) {
        String what = request.url().substring(request.url().lastIndexOf('/') + 1);
        if (request.method().equals("POST") && List.of("still", "clip").contains(what)) {
            taken.add(what + " " + request.postData());
        }
    }

    /** From now on the browser is told that it cannot play the film, until it asked for a copy. */
    void cannotPlay() {
        page.route("**/media/*/state", route -> {
            if (copied) {
                route.resume();
            } else {
                answer(
                        route,
                        200,
                        "{\"src\":null,\"why\":\"No browser plays this kind.\",\"making\":null,\"wrong\":\"\"}");
            }
        });
        page.route("**/media/*/proxy", route -> {
            copied = true;
            answer(route, 202, "{\"src\":null,\"why\":\"\",\"making\":40,\"wrong\":\"\"}");
        });
    }

    private static void answer(Route route, int status, String body) {
        route.fulfill(new Route.FulfillOptions()
                .setStatus(status)
                .setContentType("application/json")
                .setBody(body));
    }
}
