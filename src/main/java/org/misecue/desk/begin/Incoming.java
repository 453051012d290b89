package org.misecue.desk.begin;

import io.javalin.http.Context;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.misecue.desk.counter.Fields;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.FileKind;

/**
 * A file that is being sent, as the body of a request.
 *
 * @param name safe
 * @param kind by its ending, and where that leaves a choice by how it begins
 * @param announced its length, -1 where nobody says
 * @param body the file
 */
record Incoming(String name, FileKind kind, long announced, InputStream body) {

    /** @throws Refusal if it is nothing that an episode is made of */
    static Incoming of(Context request) {
        try {
            InputStream body = new BufferedInputStream(request.bodyInputStream(), Look.HEAD * 2);
            body.mark(Look.HEAD + 1);
            byte[] head = body.readNBytes(Look.HEAD);
            body.reset();
            long announced = request.req().getContentLengthLong();
            String name = name(request);
            Look look = Look.at(name, head, announced);
            FileKind kind = look.kind().orElseThrow(() -> new Refusal(415, look.sentence()));
            return new Incoming(name, kind, announced, body);
        } catch (IOException e) {
            throw new Refusal(400, "This broke off on its way, and nothing of it was kept; add it again.");
        }
    }

    /** As it was sent, made safe. */
    static String name(Context request) {
        return SafeName.of(Fields.asked(request, "name"));
    }

    /** With its dot. */
    String ending() {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? "" : name.substring(dot);
    }
}
