package org.misecue.desk.begin;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FileKind;

/** What the script of the page is told. */
final class Replies {

    private static final JsonMapper JSON = new JsonMapper();

    private Replies() {}

    static void json(Context request, Map<String, String> values) {
        ObjectNode node = JSON.createObjectNode();
        values.forEach(node::put);
        request.contentType("application/json").result(node.toString());
    }

    /**
     * Says what a file is whose beginning is the body of the request.
     *
     * @param disk where its room is
     * @param folder where a file of a kind would lie
     */
    static void look(Context request, Room room, Path disk, Function<FileKind, Path> folder) {
        String name = Incoming.name(request);
        long bytes = size(request);
        Look look = Look.at(name, head(request), bytes);
        if (look.kind().isPresent()) {
            look = look.within(name, bytes, room.most(look.kind().get(), disk));
        }
        String kind = look.kind().map(FileKind::name).orElse("");
        boolean taken =
                look.kind().map(folder).filter(path -> Taken.is(path, name)).isPresent();
        String sentence = look.sentence().isEmpty() && taken ? Taken.sentence(name) : look.sentence();
        json(request, Map.of("kind", kind, "name", name, "sentence", sentence, "taken", taken ? "yes" : ""));
    }

    private static long size(Context request) {
        return Optional.ofNullable(request.queryParam("size"))
                .filter(size -> size.matches("\\d{1,18}"))
                .map(Long::parseLong)
                .orElse(-1L);
    }

    private static byte[] head(Context request) {
        if (request.req().getContentLengthLong() > Look.HEAD) {
            throw new Refusal(413, "Only the beginning of a file is looked at; send no more of it.");
        }
        try {
            return request.bodyInputStream().readNBytes(Look.HEAD);
        } catch (IOException e) {
            throw new Refusal(400, "This broke off on its way; add the file again.");
        }
    }
}
