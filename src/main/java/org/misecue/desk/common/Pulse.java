package org.misecue.desk.common;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.Javalin;
import io.javalin.http.Context;
import org.misecue.desk.counter.Counter;
import org.misecue.desk.counter.OpenEpisode;
import org.misecue.desk.counter.Station;
import org.misecue.desk.door.Who;

/**
 * Tells a page whether something changed since it was drawn. Pages ask now and then, which costs a look at file times; a
 * lasting connection for each would use up the few that browsers keep to one address.
 */
public final class Pulse implements Station {

    private static final JsonMapper JSON = new JsonMapper();

    @Override
    public void open(Javalin server, Counter counter) {
        server.get("/e/{episode}/pulse", request -> tell(request, counter.episode(request)), Who.GUEST);
    }

    private static void tell(Context request, OpenEpisode episode) {
        ObjectNode now = JSON.createObjectNode()
                .put("inputs", episode.inputs())
                .put("state", episode.state())
                .put("doing", episode.doing());
        request.contentType("application/json").result(now.toString());
    }
}
