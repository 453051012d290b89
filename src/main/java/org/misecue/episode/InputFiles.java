package org.misecue.episode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** The files that an episode is made of, with what proves later that they are the same. */
public final class InputFiles {

    private static final int PIECE = 1 << 20;

    private InputFiles() {}

    /**
     * Recipe, settings, the own pantry, narrations and films; each is read whole once.
     *
     * @param reading is told each file's name before it is read
     */
    public static List<InputFile> of(Episode episode, Consumer<String> reading) {
        Stream<Path> settings = Stream.of("episode.yaml", "pantry.yaml")
                .map(episode.folder()::resolve)
                .filter(Files::isRegularFile);
        List<Path> files = new ArrayList<>(List.of(episode.recipe()));
        settings.forEach(files::add);
        files.addAll(episode.narration());
        files.addAll(episode.footage());
        return files.stream()
                .map(file -> {
                    reading.accept(episode.name(file));
                    return read(file, episode.name(file));
                })
                .toList();
    }

    private static InputFile read(Path file, String name) {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] piece = new byte[PIECE];
            long bytes = 0;
            for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
                digest.update(piece, 0, read);
                bytes += read;
            }
            return new InputFile(name, bytes, HexFormat.of().formatHex(digest.digest()));
        } catch (IOException e) {
            throw new BadInput(Place.of(name), "this cannot be read; check that it is still there.", e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
