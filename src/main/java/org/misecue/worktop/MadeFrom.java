package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** A mark that changes with what a filming day is planned from: recipe, settings, shot templates, own pantry, program. */
final class MadeFrom {

    private MadeFrom() {}

    static String mark(Worktop worktop) {
        List<Path> files = new ArrayList<>();
        Path folder = worktop.episode().folder();
        files.add(worktop.episode().recipe());
        files.add(folder.resolve("episode.yaml"));
        files.addAll(worktop.ownPantry().files());
        files.addAll(inside(folder.resolve("shot-templates")));
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(Version.current().getBytes(UTF_8));
            for (Path file : files) {
                if (Files.isRegularFile(file)) {
                    digest.update(("\n" + file.getFileName() + "\n").getBytes(UTF_8));
                    digest.update(Files.readAllBytes(file));
                }
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    private static List<Path> inside(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
