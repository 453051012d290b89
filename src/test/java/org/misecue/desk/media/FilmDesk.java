package org.misecue.desk.media;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.misecue.desk.OpenDesk;

/** An invented episode with room for films, open on a desk. */
final class FilmDesk implements AutoCloseable {

    static final String MEDIA = "/e/buns/media/";

    final Path folder;
    final OpenDesk desk;

    FilmDesk(Path temp) throws IOException {
        folder = Files.createDirectories(temp.resolve("buns"));
        Files.writeString(folder.resolve("recipe.md"), "# Buns\n\n- 200 g flour\n- 100 g milk\n\n1. Mix.\n2. Bake.\n");
        Files.createDirectories(footage());
        desk = OpenDesk.over(folder).enter();
    }

    Path footage() {
        return folder.resolve("footage");
    }

    HttpResponse<byte[]> bytes(String path, String... headers) {
        return bytes(desk.request(path, headers).GET());
    }

    HttpResponse<byte[]> bytes(HttpRequest.Builder request) {
        try {
            return desk.client().send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As one of the desk's own pages would. */
    HttpResponse<String> send(String method, String path) {
        return desk.send(
                desk.request(path, "Origin", desk.origin()).method(method, HttpRequest.BodyPublishers.noBody()));
    }

    @Override
    public void close() {
        desk.close();
    }
}
