package org.misecue.desk.media;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.eclipse.jetty.server.HttpOutput;
import org.eclipse.jetty.util.Callback;
import org.misecue.desk.door.Refusal;

/**
 * Sends files and stretches of them. Jetty does the sending and waits for nobody meanwhile: somebody slow holds a connection
 * with its buffer, and no thread. What to send is worked out here, because Jetty's own service for files does not know
 * {@code If-Range} and sends stretches with a thread that waits.
 */
final class Served {

    private static final Map<String, String> TYPES = Map.of(
            "mp4", "video/mp4",
            "m4v", "video/mp4",
            "webm", "video/webm",
            "mov", "video/quicktime",
            "mkv", "video/matroska",
            "png", "image/png");

    private Served() {}

    /** Answers a GET or HEAD for a file that the asker may have. */
    static void file(Context request, Path file) {
        try {
            Version version = Version.of(file);
            request.header("Accept-Ranges", "bytes");
            request.header("ETag", version.tag());
            request.header("Last-Modified", version.changedText());
            version.ending(request).ifPresentOrElse(request::status, () -> content(request, file, version));
        } catch (IOException e) {
            throw gone();
        }
    }

    private static void content(Context request, Path file, Version version) {
        Wanted wanted = wanted(request, version);
        if (wanted instanceof Wanted.Nothing) {
            request.header("Content-Range", "bytes */" + version.size());
            throw new Refusal(416, "The file has no such part; load the page again.");
        }
        request.contentType(type(file));
        if (wanted instanceof Wanted.Part part) {
            request.status(206).header("Content-Range", part.of(version.size()));
            send(request, file, part);
        } else {
            send(request, file, new Wanted.Part(0, version.size()));
        }
    }

    private static Wanted wanted(Context request, Version version) {
        List<String> ranges = Collections.list(request.req().getHeaders("Range"));
        String ifRange = request.header("If-Range");
        boolean whole = request.method() != HandlerType.GET
                || ranges.size() != 1
                || (ifRange != null && !version.stillHolds(ifRange.strip()));
        return whole ? new Wanted.Whole() : Wanted.read(ranges.get(0), version.size());
    }

    private static void send(Context request, Path file, Wanted.Part part) {
        request.res().setContentLengthLong(part.length());
        if (request.method() == HandlerType.HEAD) {
            return;
        }
        request.future(() -> {
            CompletableFuture<Void> sent = new CompletableFuture<>();
            try {
                Excerpt excerpt = new Excerpt(file, part.first(), part.length());
                ((HttpOutput) request.res().getOutputStream()).sendContent(excerpt, done(excerpt, sent));
            } catch (IOException e) {
                sent.completeExceptionally(gone());
            }
            return sent;
        });
    }

    /** However it ends, the file is let go; somebody who hung up is no fault. */
    private static Callback done(Excerpt excerpt, CompletableFuture<Void> sent) {
        return Callback.from(() -> {
            try {
                excerpt.close();
            } catch (IOException e) {
                // it was only read
            }
            sent.complete(null);
        });
    }

    private static Refusal gone() {
        return new Refusal(404, "This file cannot be read any more; load the page again.");
    }

    private static String type(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream");
    }
}
